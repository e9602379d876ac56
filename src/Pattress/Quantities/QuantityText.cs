namespace Pattress.Quantities;

/// <summary>
/// Reads quantities as people write them, at the doors only: <c>12 kg</c>, <c>0.3 kN</c>, <c>25 lbf</c>, <c>1/2 in</c>,
/// <c>1 1/2 in</c>, <c>1-1/2 in</c>, <c>5 ft 3 in</c>. The decimal sign is a point; a comma is refused, since it means
/// two things. Units tell upper from lower case.
/// </summary>
public static class QuantityText
{
    /// <summary>Larger numbers, in the dimension's own unit, are taken for a slip and refused.</summary>
    public const double Largest = 1e15;

    /// <summary>
    /// The number in the unit that the dimension names. A unit is required (none for <see cref="Dimension.Number"/>).
    /// False, and zero, where the text is empty, no number, without unit, in a unit of another dimension, or too large.
    /// </summary>
    public static bool TryParse(ReadOnlySpan<char> text, Dimension dimension, out double value) =>
        TryParse(text, dimension, out value, out _);

    /// <summary>
    /// As above; <paramref name="code"/> says what was wrong: <c>quantity_empty</c>, <c>quantity_not_a_number</c>,
    /// <c>quantity_without_unit</c>, <c>quantity_wrong_unit</c>, <c>quantity_too_large</c>; empty where all is well.
    /// </summary>
    public static bool TryParse(ReadOnlySpan<char> text, Dimension dimension, out double value, out string code)
    {
        value = 0;
        code = Read(text.Trim(), dimension, out double sum);
        if (code.Length == 0 && !(Math.Abs(sum) <= Largest)) code = "quantity_too_large";
        if (code.Length > 0) return false;
        value = sum;
        return true;
    }

    /// <summary>As above, and a bare number is taken in the dimension's own unit: for the command line, where <c>d=5</c> is plain.</summary>
    public static bool TryParseOrBare(ReadOnlySpan<char> text, Dimension dimension, out double value, out string code)
    {
        if (TryParse(text, dimension, out value, out code)) return true;
        return code == "quantity_without_unit" && TryParse(text, Dimension.Number, out value, out code);
    }

    /// <summary>What is allowed, in plain words: <c>a number, or text with a unit: mm, cm, m, in, ft, yd</c>.</summary>
    public static string Allowed(Dimension dimension)
    {
        if (dimension == Dimension.Number) return "a number without unit";
        var units = Units.Of(dimension)[..Units.Shown(dimension)];
        var names = new string[units.Length];
        for (int i = 0; i < units.Length; i++) names[i] = units[i].Text;
        return "a number, or text with a unit: " + string.Join(", ", names);
    }

    /// <summary>The unit that the dimension's name carries, e.g. <c>mm</c>; empty for a pure number.</summary>
    public static string OwnUnit(Dimension dimension) => Units.Of(dimension) is [var own, ..] ? own.Text : "";

    /// <summary>The problem to report for a text that was refused.</summary>
    public static Problem Refusal(string code, string path, string text, Dimension dimension) =>
        new(code, path, text.Length > 80 ? text[..80] : text, Allowed(dimension));

    private static string Read(ReadOnlySpan<char> text, Dimension dimension, out double sum)
    {
        sum = 0;
        if (text.IsEmpty) return "quantity_empty";
        if (dimension == Dimension.Number)
            return NumberText.Read(ref text, out sum) && text.Trim().IsEmpty ? "" : "quantity_not_a_number";
        double least = double.PositiveInfinity;
        bool negative = text[0] == '-';
        if (negative) text = text[1..];
        while (!text.IsEmpty)
        {
            string code = Part(ref text, dimension, ref least, out double part);
            if (code.Length > 0) return code;
            sum += negative ? -part : part;
        }
        return "";
    }

    // A further part must be in a smaller unit: "5 ft 3 in", never "3 in 5 ft".
    private static string Part(ref ReadOnlySpan<char> text, Dimension dimension, ref double least, out double part)
    {
        bool first = double.IsPositiveInfinity(least);
        part = 0;
        if (!NumberText.Read(ref text, out double number) || number < 0 || double.IsNegative(number)) return "quantity_not_a_number";
        text = text.TrimStart();
        if (text.IsEmpty) return "quantity_without_unit";
        double factor = LongestUnit(ref text, dimension);
        if (!(factor > 0)) return "quantity_wrong_unit";
        if (factor >= least || (!first && dimension is not (Dimension.LengthMm or Dimension.MassKg))) return "quantity_wrong_unit";
        least = factor;
        part = number * factor;
        text = text.TrimStart();
        return "";
    }

    private static double LongestUnit(ref ReadOnlySpan<char> text, Dimension dimension)
    {
        double factor = 0;
        int length = 0;
        foreach (var unit in Units.Of(dimension))
        {
            if (unit.Text.Length <= length || !text.StartsWith(unit.Text, StringComparison.Ordinal) || !Ends(text, unit.Text.Length)) continue;
            (factor, length) = (unit.Factor, unit.Text.Length);
        }
        text = text[length..];
        return factor;
    }

    // A unit ends at the end, a space, or where the next part's digits begin ("5ft3in").
    private static bool Ends(ReadOnlySpan<char> text, int at) =>
        at == text.Length || text[at] == ' ' || (char.IsAsciiDigit(text[at]) && !char.IsAsciiDigit(text[at - 1]));
}
