using System.Globalization;

namespace Pattress.Quantities;

/// <summary>Reads the number at the start of a text: a decimal, a fraction, or a whole number and a fraction.</summary>
internal static class NumberText
{
    /// <summary>Takes the number off the text. False where there is none, a denominator is zero, or it is not finite.</summary>
    internal static bool Read(ref ReadOnlySpan<char> text, out double value)
    {
        if (!Decimal(ref text, out value, out bool whole)) return false;
        if (!whole) return true;
        if (text.Length > 0 && text[0] == '/') return Over(ref text, ref value);
        return Mixed(ref text, ref value);
    }

    // "1 1/2" and "1-1/2"; without the slash the second number belongs to something else and stays.
    private static bool Mixed(ref ReadOnlySpan<char> text, ref double value)
    {
        if (text.Length < 4 || text[0] is not (' ' or '-') || !char.IsAsciiDigit(text[1])) return true;
        var rest = text[1..];
        if (!Decimal(ref rest, out double fraction, out bool whole) || !whole) return true;
        if (rest.Length == 0 || rest[0] != '/') return true;
        if (!Over(ref rest, ref fraction) || fraction >= 1) return false;
        value = double.IsNegative(value) ? value - fraction : value + fraction;
        text = rest;
        return true;
    }

    private static bool Over(ref ReadOnlySpan<char> text, ref double numerator)
    {
        text = text[1..];
        if (!Decimal(ref text, out double below, out bool whole) || !whole || !(below > 0)) return false;
        numerator /= below;
        return true;
    }

    private static bool Decimal(ref ReadOnlySpan<char> text, out double value, out bool whole)
    {
        int end = Length(text, out whole);
        bool ok = double.TryParse(text[..end], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        text = text[end..];
        return ok && end > 0;
    }

    private static int Length(ReadOnlySpan<char> text, out bool whole)
    {
        int i = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        i += Digits(text[i..]);
        whole = true;
        if (i < text.Length && text[i] == '.') { whole = false; i++; i += Digits(text[i..]); }
        int e = Exponent(text[i..]);
        whole &= e == 0;
        return i + e;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        int i = 0;
        while (i < text.Length && char.IsAsciiDigit(text[i])) i++;
        return i;
    }

    private static int Exponent(ReadOnlySpan<char> text)
    {
        if (text.Length < 2 || text[0] is not ('e' or 'E')) return 0;
        int sign = text[1] is '-' or '+' ? 1 : 0;
        int digits = Digits(text[(1 + sign)..]);
        return digits == 0 ? 0 : 1 + sign + digits;
    }
}
