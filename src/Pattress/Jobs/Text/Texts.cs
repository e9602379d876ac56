using System.Globalization;
using System.Text;

namespace Pattress.Jobs.Text;

/// <summary>The one place where codes and values become sentences.</summary>
public static class Texts
{
    /// <summary>True when the code has a text of its own.</summary>
    public static bool Has(string code) => TextTable.Find(code, "british") is not null;

    /// <summary>What <c>settings.english</c> may say: <c>british</c>, <c>american</c>, and the id of each further language there is a file of.</summary>
    public static IReadOnlyList<string> Tongues => TextTable.AllTongues;

    /// <summary>The language of the texts as BCP 47 has it, e.g. <c>en-GB</c>.</summary>
    public static string Tag(Settings settings) => Name("language.tag", settings);

    /// <summary>The sentence of a reason, its values shown in the job's units.</summary>
    public static string Sentence(Reason reason, Settings settings) => Sentence(reason.Code, reason.Values, settings);

    /// <summary>The sentence of a code and its values.</summary>
    public static string Sentence(string code, IReadOnlyList<Said> values, Settings settings) =>
        TextTable.Find(code, settings.English) is "{0}" && values is [{ As: Shown.Name }]
            ? Name(values[0].Text, settings)
            : Fill(TextTable.Find(code, settings.English) ?? Plain(code), [.. values.Select(v => Shows.Value(v, settings))]);

    /// <summary>The sentence of a problem: what is wrong, where, what was found and what is allowed.</summary>
    public static string Sentence(Problem problem) => Sentence(problem, new Settings());

    /// <summary>The same in the language of a job.</summary>
    public static string Sentence(Problem problem, Settings settings) =>
        Fill(TextTable.Find(problem.Code, settings.English) ?? "{0}: " + Plain(problem.Code) + ". Allowed: {2}.", [problem.Path, problem.Value, problem.Allowed]);

    /// <summary>The same for whoever stands at the wall: names and words first, no path of a document.</summary>
    /// <param name="job">The job that the problem is in, for its names; null where it is not read.</param>
    public static string Plainly(Problem problem, Job? job, Settings settings)
    {
        string template = TextTable.Find("plainly." + problem.Code, settings.English) ?? TextTable.Find(problem.Code, settings.English) ?? "{0}: " + Plain(problem.Code) + ". {2}.";
        string said = Fill(template, [Places.Of(problem.Path, job, settings), Places.WithPoints(problem.Value, settings), problem.Allowed]);
        return char.ToUpperInvariant(said[0]) + said[1..];
    }

    /// <summary>The words of a fixed id: a kind of fixing with or without its size, a fixture, a build-up, a field.</summary>
    public static string Name(string id, Settings settings) => Name(id, settings.English);

    /// <summary>The words of a fixed id, in British English.</summary>
    public static string Name(string id) => Name(id, "british");

    private static string Name(string id, string english) => Sized(id, english, Listed);

    /// <summary>The same within a sentence, where a comma would cut it: "a medium strap toggle in board", but in a list "strap toggle, medium".</summary>
    internal static string NameInSentence(string id, Settings settings) => Sized(id, settings.English, "name.in_sentence");

    private const string Listed = "name.listed";

    private static string Sized(string id, string english, string order)
    {
        if (TextTable.Find(id, english) is { } name) return name;
        int dot = id.LastIndexOf('.');
        if (dot <= 0 || TextTable.Find(id[..dot], english) is not { } kind) return Plain(id);
        string size = id[(dot + 1)..];
        // "knotting plug 8 × 40" everywhere.
        return size.Length > 0 && char.IsAsciiDigit(size[0]) ? $"{kind} {size.Replace("x", " × ", StringComparison.Ordinal)}"
            : Fill(TextTable.Find(order, english)!, [kind, TextTable.Find(size, english) ?? Plain(size)]);
    }

    /// <summary>What stands for a code without text; a test sees to it that none is needed.</summary>
    private static string Plain(string code) => code[(code.LastIndexOf('.') + 1)..].Replace('_', ' ');

    private static string Fill(string template, IReadOnlyList<string> values)
    {
        var text = new StringBuilder();
        int at = 0;
        while (at < template.Length)
        {
            int open = template.IndexOf('{', at), close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0) break;
            text.Append(template, at, open - at).Append(ValueAt(template.AsSpan(open + 1, close - open - 1), values));
            at = close + 1;
        }
        text.Append(template, at, template.Length - at);
        if ((template.StartsWith("{0} ", StringComparison.Ordinal) || template.StartsWith("{0}:", StringComparison.Ordinal)) && text.Length > 0) text[0] = char.ToUpperInvariant(text[0]);
        return text.ToString();
    }

    private static string ValueAt(ReadOnlySpan<char> number, IReadOnlyList<string> values) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int i) && i < values.Count ? values[i] : "?";
}
