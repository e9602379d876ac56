using System.Text.RegularExpressions;

namespace Pattress.Tests.Rules;

/// <summary>Which part of the library declares which type, and which types of other parts a file names.</summary>
internal sealed partial class LibraryMap
{
    private readonly Dictionary<(string Namespace, string Type), string> _parts = [];

    public LibraryMap()
    {
        Files = [.. SourceTree.Files("src/Pattress", ".cs")];
        foreach (string file in Files) Declare(file, SourceTree.Code(file));
    }

    public IReadOnlyList<string> Files { get; }

    /// <summary>The part a file belongs to: its folder, but Jobs in three and the special functions of Trials apart (docs/decisions/0001-layout.md).</summary>
    public static string PartOf(string file)
    {
        string[] steps = file["src/Pattress/".Length..].Split('/');
        if (steps.Length == 1) return "Root";
        if (steps is ["Trials", "Special", ..]) return "Functions";
        return steps[0] != "Jobs" ? steps[0] : PartOfJobs(steps);
    }

    private static string PartOfJobs(string[] steps) => steps[1] switch
    {
        "Job.cs" or "Wall.cs" or "TestRecords.cs" or "JobMoney.cs" or "OwnClaim.cs" or "WorkDone.cs" or "Editions.cs" or "FurtherWalls.cs" or "JsonOut.cs" or "Doors" => "Documents",
        "Answer.cs" => "Answers",
        _ => "Jobs",
    };

    /// <summary>The other parts that a file names, each with one type of it.</summary>
    public IEnumerable<(string Part, string Type)> Uses(string file)
    {
        string code = SourceTree.Code(file), own = PartOf(file);
        var words = Word().Matches(MemberName().Replace(code, " ")).Select(m => m.Value).ToHashSet(StringComparer.Ordinal);
        var visible = Visible(code);
        return _parts.Where(p => p.Value != own && words.Contains(p.Key.Type) && Sees(visible, code, p.Key.Namespace))
            .Select(p => (p.Value, p.Key.Type)).DistinctBy(p => p.Value);
    }

    private void Declare(string file, string code)
    {
        string space = Namespace().Match(code).Groups[1].Value;
        foreach (Match type in Declaration().Matches(code)) _parts[(space, type.Groups[1].Value)] = PartOf(file);
    }

    private static HashSet<string> Visible(string code)
    {
        var spaces = Using().Matches(code).Select(m => m.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        for (string own = Namespace().Match(code).Groups[1].Value; own.Length > 0; own = own.Contains('.') ? own[..own.LastIndexOf('.')] : "")
            spaces.Add(own);
        return spaces;
    }

    // Seen by a using, or written out: Actions.Assumption.
    private static bool Sees(HashSet<string> visible, string code, string space) =>
        visible.Contains(space) || Regex.IsMatch(code, $@"(?<![\w.]){Regex.Escape(space["Pattress".Length..].TrimStart('.'))}\.[A-Z]") && space != "Pattress";

    [GeneratedRegex(@"(?<!\.\s*)\b[A-Z]\w+\b")]
    private static partial Regex Word();

    // The name of a property, parameter or field, which may be spelt as a type is.
    [GeneratedRegex(@"(?<=\b(?!(?:new|is|as|in|or|and|not|case|return|throw|else|await)\b)[\w>\]\[?]+\s)[A-Z]\w+(?=\s*(?:[,;)=]|\{\s*get))")]
    private static partial Regex MemberName();

    [GeneratedRegex(@"^namespace\s+([\w.]+)", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"^\s*using\s+(?:static\s+|\w+\s*=\s*)?(Pattress[\w.]*)\s*;", RegexOptions.Multiline)]
    private static partial Regex Using();

    [GeneratedRegex(@"\b(?:class|record\s+struct|record\s+class|record|struct|enum|interface|delegate\s+\w+)\s+([A-Z]\w+)")]
    private static partial Regex Declaration();
}
