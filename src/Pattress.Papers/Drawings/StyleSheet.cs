using System.Globalization;
using System.Text;

namespace Pattress.Papers.Drawings;

/// <summary>The parts of the pages' style sheet that drawings need. It reads the plain form that the sheet is written in, no more.</summary>
internal static class StyleSheet
{
    private const string Dark = "@media (prefers-color-scheme: dark)";

    public static string OfPages { get; } = Read();

    /// <summary>Rules whose selectors all begin with <c>.drawing</c>, in their order.</summary>
    public static IEnumerable<(string Selectors, string Body)> Drawing(string css)
    {
        int at = 0;
        for (int open = css.IndexOf('{', at); open >= 0; open = css.IndexOf('{', at))
        {
            int close = css.IndexOfAny(['{', '}'], open + 1);
            if (close < 0) yield break;
            string selectors = css[at..open].Trim(' ', '\n', '\r', '}');
            // A brace within braces begins a group of rules; its own rules are not for drawings.
            if (css[close] == '}' && selectors.Split(',').All(s => s.Trim().StartsWith(".drawing", StringComparison.Ordinal)))
                yield return (selectors, css[(open + 1)..close].Trim());
            at = css[close] == '}' ? close + 1 : open + 1;
        }
    }

    /// <summary>Names and colours of a palette: the first that the sheet defines.</summary>
    public static IReadOnlyDictionary<string, string> Palette(string css)
    {
        var palette = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string line in css.Split('\n', ';', '{').Select(l => l.Trim()))
        {
            int colon = line.IndexOf(':');
            if (!line.StartsWith("--", StringComparison.Ordinal) || colon < 0 || line[(colon + 1)..].Trim() is not ['#', ..] hex || hex.Length != 7) continue;
            palette.TryAdd(line[2..colon], hex);
        }
        return palette;
    }

    /// <summary>A style sheet for a drawing that stands alone, in both themes.</summary>
    public static string Alone(string css)
    {
        string bright = Colours(Palette(css)), dark = css.IndexOf(Dark, StringComparison.Ordinal) is >= 0 and int at ? Colours(Palette(css[at..])) : "";
        var rules = Drawing(css).Select(r => $"{r.Selectors}{{{r.Body}}}");
        return $".drawing{{{bright}background:var(--board);font-family:sans-serif}}{(dark.Length > 0 ? $"{Dark}{{.drawing{{{dark}}}}}" : "")}{string.Concat(rules)}";
    }

    /// <summary><c>var(--do)</c> is "do"; <c>none</c> is nothing.</summary>
    public static string Name(string value) => value == "none" ? "" : value.Replace("var(--", "", StringComparison.Ordinal).TrimEnd(')');

    public static double Number(string value) => double.Parse(value, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string Colours(IReadOnlyDictionary<string, string> palette) => string.Concat(palette.Select(p => $"--{p.Key}:{p.Value};"));

    private static string Read()
    {
        using var stream = typeof(StyleSheet).Assembly.GetManifestResourceStream("pattress.css")!;
        using var reader = new StreamReader(stream);
        return WithoutComments(reader.ReadToEnd());
    }

    private static string WithoutComments(string css)
    {
        var text = new StringBuilder();
        int at = 0;
        for (int open = css.IndexOf("/*", StringComparison.Ordinal); open >= 0; open = css.IndexOf("/*", at, StringComparison.Ordinal))
        {
            text.Append(css, at, open - at);
            int close = css.IndexOf("*/", open, StringComparison.Ordinal);
            at = close < 0 ? css.Length : close + 2;
        }
        return text.Append(css, at, css.Length - at).ToString();
    }
}
