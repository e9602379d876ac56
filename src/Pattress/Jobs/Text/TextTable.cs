namespace Pattress.Jobs.Text;

/// <summary>Every sentence and name there is, by code, in both kinds of English (<c>data/text/*.csv</c>).</summary>
internal static class TextTable
{
    private const string American = "american";

    private static readonly Lazy<Dictionary<string, (string British, string American)>> All = new(Read);

    /// <summary>The text of a code, or null when there is none.</summary>
    public static string? Find(string code, string english) =>
        !All.Value.TryGetValue(code, out var texts) ? null : english == American ? texts.American : texts.British;

    /// <summary>Every code that has a text.</summary>
    public static IEnumerable<string> Codes => All.Value.Keys;

    private static Dictionary<string, (string British, string American)> Read()
    {
        var texts = new Dictionary<string, (string British, string American)>(StringComparer.Ordinal);
        foreach (var row in Embedded.Names("data/text/").SelectMany(name => CsvTable.FromEmbedded(name).Rows))
        {
            string british = row["british"], american = row[American];
            texts[row["code"]] = (british, american.Length > 0 ? american : british);
        }
        return texts;
    }
}
