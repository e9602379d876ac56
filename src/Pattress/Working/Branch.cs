namespace Pattress.Working;

/// <summary>A formula that is a choice: its condition and its two arms, as source text.</summary>
internal readonly record struct Branch(string If, string Then, string Else)
{
    /// <summary>The outermost choice of a formula; null where it is none.</summary>
    internal static Branch? Of(string formula)
    {
        if (At(formula, 0, '?') is not { } question || At(formula, question + 1, ':') is not { } colon) return null;
        return new(formula[..question].Trim(), formula[(question + 1)..colon].Trim(), formula[(colon + 1)..].Trim());
    }

    // The sign outside of parentheses; a colon that belongs to a choice within the first arm is passed over.
    private static int? At(string text, int from, char sign)
    {
        int depth = 0, choices = 0;
        for (int i = from; i < text.Length; i++)
        {
            char c = text[i];
            if (c == sign && depth == 0 && choices == 0) return i;
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0) choices += c == '?' ? 1 : c == ':' ? -1 : 0;
        }
        return null;
    }
}
