using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>The words of the trade that are explained where they stand.</summary>
public static class Terms
{
    /// <summary>Their ids: <c>ui.term.ID</c> is the word, <c>.says</c> what it means, <c>.forms</c> how it stands in a sentence.</summary>
    public static IReadOnlyList<string> Ids { get; } =
    [
        "fixing", "fixture", "build_up", "void", "dab", "skim", "stud", "joist", "noggin", "lintel", "lath", "laminate", "reading", "probe", "swarf", "strip",
        "datum", "toe", "utilisation", "chance", "proof",
    ];

    /// <summary>A text in pieces; a piece that is a term carries its id, the first time that it stands there.</summary>
    public static IReadOnlyList<(string Text, string Term)> Split(string text, Words words)
    {
        var found = Ids.Select(id => Find(text, id, words)).Where(f => f.At >= 0).OrderBy(f => f.At).ThenByDescending(f => f.Length);
        var pieces = new List<(string, string)>();
        int from = 0;
        foreach (var (at, length, id) in found)
        {
            if (at < from) continue;
            if (at > from) pieces.Add((text[from..at], ""));
            pieces.Add((text.Substring(at, length), id));
            from = at + length;
        }

        if (from < text.Length) pieces.Add((text[from..], ""));
        return pieces;
    }

    private static (int At, int Length, string Id) Find(string text, string id, Words words)
    {
        foreach (string form in words.Say(new Reason($"ui.term.{id}.forms")).Split('|'))
            if (Whole(text, form) is >= 0 and var at) return (at, form.Length, id);
        return (-1, 0, id);
    }

    private static int Whole(string text, string form)
    {
        for (int at = 0; (at = text.IndexOf(form, at, StringComparison.OrdinalIgnoreCase)) >= 0; at++)
            if ((at == 0 || !Joined(text[at - 1])) && (at + form.Length == text.Length || !Joined(text[at + form.Length]))) return at;
        return -1;
    }

    private static bool Joined(char c) => char.IsLetterOrDigit(c) || c is '-' or '_';
}
