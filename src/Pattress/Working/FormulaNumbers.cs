using System.Globalization;
using System.Text;

namespace Pattress.Working;

/// <summary>Puts the recorded numbers into the text of a formula.</summary>
internal static class FormulaNumbers
{
    /// <summary>The shortest text that reads back as the same number.</summary>
    internal static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The source text on one line.</summary>
    internal static string OneLine(string formula)
    {
        if (formula.AsSpan().IndexOfAny('\n', '\r') < 0) return formula;
        return string.Join(' ', formula.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The formula with each symbol replaced by its number; a negative number stands in parentheses.</summary>
    internal static string PutIn(string formula, ReadOnlySpan<KeyValuePair<string, double>> inputs) => PutIn(formula, inputs, Text);

    /// <inheritdoc cref="PutIn(string, ReadOnlySpan{KeyValuePair{string, double}})"/>
    /// <param name="show">How a number is written.</param>
    internal static string PutIn(string formula, ReadOnlySpan<KeyValuePair<string, double>> inputs, Func<double, string> show)
    {
        var text = new StringBuilder(formula.Length + 16);
        for (int i = 0; i < formula.Length;)
        {
            int end = NameEnd(formula, i);
            if (end == i) { text.Append(formula[i++]); continue; }
            var name = formula.AsSpan(i, end - i);
            if (char.IsAsciiDigit(name[0]) || !Find(inputs, name, out double value)) text.Append(name);
            else if (value < 0) text.Append('(').Append(show(value)).Append(')');
            else text.Append(show(value));
            i = end;
        }
        return text.ToString();
    }

    private static int NameEnd(string formula, int i)
    {
        while (i < formula.Length && (char.IsLetterOrDigit(formula[i]) || formula[i] == '_')) i++;
        return i;
    }

    private static bool Find(ReadOnlySpan<KeyValuePair<string, double>> inputs, ReadOnlySpan<char> name, out double value)
    {
        foreach (var input in inputs)
        {
            if (!name.SequenceEqual(input.Key)) continue;
            value = input.Value;
            return true;
        }
        value = 0;
        return false;
    }
}
