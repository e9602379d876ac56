using System.Globalization;
using Pattress.Jobs.Text;
using Pattress.Working;

namespace Pattress.Cli.Printing;

/// <summary>One step of a working, set as far as a terminal can: symbol = formula = numbers = value unit [clause]. All digits of it stand in the JSON.</summary>
internal static class StepLine
{
    public static string Of(Sheet sheet, string symbol, string formula, string numbers, double value, string unit, string clause)
    {
        string set = FormulaText.Formula(formula), figures = numbers.Length > 0 ? FormulaText.Numbers(numbers, Shows.FiveFigures) : "";
        if (symbol == Step.Case) return $"{set}: {figures}: {sheet.T(value != 0 ? "yes" : "no")}  [{clause}]";
        string result = $"{Shows.ThreeFigures(value)} {unit}".TrimEnd();
        string middle = IsNumber(formula) ? "" : numbers.Length > 0 && numbers != formula ? $"{set} = {figures} = " : $"{set} = ";
        return $"{FormulaText.Symbol(symbol)} = {middle}{result}  [{clause}]";
    }

    // A value taken from a table: the formula is the number itself, and once is enough.
    private static bool IsNumber(string formula) => double.TryParse(formula, CultureInfo.InvariantCulture, out _);
}
