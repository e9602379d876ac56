namespace Pattress.Jobs.Text;

/// <summary>
/// Every sentence and name there is, by code: both kinds of English in <c>data/text/*.csv</c>, any other language in one file
/// <c>data/languages/ID.csv</c> with the columns <c>code</c> and <c>text</c>. What such a file leaves out is said in British English.
/// </summary>
internal sealed class TextTable
{
    private const string British = "british", American = "american", NameOf = "english.", Folder = "data/languages/";

    private static readonly Lazy<TextTable> Shipped = new(() => new(
        Embedded.Names("data/text/").Select(CsvTable.FromEmbedded),
        Embedded.Names(Folder).Select(name => (name[Folder.Length..^".csv".Length], CsvTable.FromEmbedded(name)))));

    private readonly Dictionary<string, (string British, string American)> _english = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Dictionary<string, string>> _others = new(StringComparer.Ordinal);

    public TextTable(IEnumerable<CsvTable> english, IEnumerable<(string Id, CsvTable Texts)> others)
    {
        foreach (var row in english.SelectMany(t => t.Rows))
        {
            string british = row[British], american = row[American];
            _english[row["code"]] = (british, american.Length > 0 ? american : british);
        }

        foreach (var (id, texts) in others) _others[id] = texts.Rows.ToDictionary(r => r["code"], r => r["text"], StringComparer.Ordinal);
    }

    /// <summary>The two kinds of English and every further language.</summary>
    public IReadOnlyList<string> Tongues => [British, American, .. _others.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Every code that has a text.</summary>
    public IEnumerable<string> Codes => _english.Keys;

    /// <summary>That of the shipped texts.</summary>
    public static string? Find(string code, string tongue) => Shipped.Value.Of(code, tongue);

    public static IReadOnlyList<string> AllTongues => Shipped.Value.Tongues;

    /// <summary>The text of a code, or null when there is none.</summary>
    public string? Of(string code, string tongue)
    {
        if (_others.TryGetValue(tongue, out var own) && own.TryGetValue(code, out string? text) && text.Length > 0) return text;
        if (_english.TryGetValue(code, out var english)) return tongue == American ? english.American : english.British;
        // A language says its own name, so that whoever reads it finds it in the list.
        return code.StartsWith(NameOf, StringComparison.Ordinal) && _others.TryGetValue(code[NameOf.Length..], out var named) ? named.GetValueOrDefault(code) : null;
    }
}
