using System.Globalization;
using System.Text.RegularExpressions;

namespace Pattress.Cli.Printing;

/// <summary>Numbers of a working, as long as they tell anything; all of their digits stand in the JSON.</summary>
internal static partial class Figures
{
    /// <summary>The text with every long number cut to five figures.</summary>
    public static string Short(string numbers) =>
        Long().Replace(numbers, m => double.Parse(m.Value, CultureInfo.InvariantCulture).ToString("G5", CultureInfo.InvariantCulture));

    [GeneratedRegex(@"[0-9]+\.[0-9]{4,}(E[-+]?[0-9]+)?")]
    private static partial Regex Long();
}
