using System.Globalization;
using System.Text.RegularExpressions;
using Pattress.Jobs.Text;
using Pattress.Working;

namespace Pattress.Cli.Printing;

/// <summary>One step of a working: symbol = formula = numbers = value unit [clause]. All digits of it stand in the JSON.</summary>
internal static partial class StepLine
{
    public static string Of(string symbol, string formula, string numbers, double value, string unit, string clause)
    {
        if (symbol == Step.Case) return $"{formula}: {Short(numbers)}: {(value != 0 ? "yes" : "no")}  [{clause}]";
        string result = $"{Shows.ThreeFigures(value)} {unit}".TrimEnd();
        string middle = IsNumber(formula) ? "" : numbers.Length > 0 && numbers != formula ? $"{formula} = {Short(numbers)} = " : $"{formula} = ";
        return $"{symbol} = {middle}{result}  [{clause}]";
    }

    // A value taken from a table: the formula is the number itself, and once is enough.
    private static bool IsNumber(string formula) => double.TryParse(formula, CultureInfo.InvariantCulture, out _);

    private static string Short(string numbers) => Long().Replace(numbers, m => Shows.FiveFigures(double.Parse(m.Value, CultureInfo.InvariantCulture)));

    [GeneratedRegex(@"[0-9]+\.[0-9]{4,}(E[-+]?[0-9]+)?")]
    private static partial Regex Long();
}
