using System.Globalization;

namespace Pattress.Papers.Drawings;

/// <summary>How a mark is drawn; colours are names of the palette, lengths px.</summary>
/// <param name="Stroke">Empty: no stroke.</param>
/// <param name="Fill">Empty: not filled.</param>
/// <param name="TextRem">Height of letters, rem.</param>
public sealed record Look(
    string Stroke, double WidthPx, IReadOnlyList<double> Dash, double StrokeOpacity, string Fill, double FillOpacity, double TextRem, bool Bold);

/// <summary>The looks of all marks, read from the style sheet of the pages, so that screen and paper cannot differ.</summary>
public sealed class Theme
{
    private static readonly Look Bare = new("", 1, [], 1, "", 1, 0.8, false);
    private readonly IReadOnlyList<StyleRule> _rules;
    private readonly IReadOnlyDictionary<string, string> _palette;
    private readonly Dictionary<(string, string), Look> _known = [];

    private Theme(IReadOnlyList<StyleRule> rules, IReadOnlyDictionary<string, string> palette) => (_rules, _palette) = (rules, palette);

    /// <summary>Height of letters that drawings are laid out for, rem.</summary>
    public const double TextRem = 0.8;

    /// <summary>A theme of its own: it keeps what it worked out, so each writer takes one.</summary>
    public static Theme OfPages() => Parse(StyleSheet.OfPages);

    /// <summary>The look of a mark.</summary>
    public Look Of(Mark mark)
    {
        string element = mark switch { TextMark => "text", CircleMark => "circle", RectMark or BandMark => "rect", _ => "path" };
        if (_known.TryGetValue((element, mark.Class), out var look)) return look;
        string[] classes = mark.Class.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var matching = _rules.Where(r => r.Fits(element, classes)).OrderBy(r => r.Classes.Count);
        return _known[(element, mark.Class)] = matching.Aggregate(Bare, (l, r) => r.Set.Aggregate(l, (x, p) => With(x, p.Key, p.Value)));
    }

    /// <summary>Red, green and blue of a colour of the bright palette, 0 to 255.</summary>
    public (int Red, int Green, int Blue) Colour(string name)
    {
        string hex = _palette[name];
        int At(int i) => int.Parse(hex.AsSpan(i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return (At(1), At(3), At(5));
    }

    internal static Theme Parse(string css)
    {
        var palette = StyleSheet.Palette(css);
        return new([.. StyleSheet.Drawing(css).SelectMany(StyleRule.Of)], palette);
    }

    private static Look With(Look look, string property, string value) => property switch
    {
        "stroke" => look with { Stroke = StyleSheet.Name(value) },
        "stroke-width" => look with { WidthPx = StyleSheet.Number(value) },
        "stroke-opacity" => look with { StrokeOpacity = StyleSheet.Number(value) },
        "stroke-dasharray" => look with { Dash = [.. value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(StyleSheet.Number)] },
        "fill" => look with { Fill = StyleSheet.Name(value) },
        "fill-opacity" => look with { FillOpacity = StyleSheet.Number(value) },
        "font-size" => look with { TextRem = StyleSheet.Number(value.Replace("rem", "", StringComparison.Ordinal)) },
        "font-weight" => look with { Bold = value == "bold" },
        _ => look,
    };
}

/// <summary>One selector with what it sets: an element or classes that a mark must all have.</summary>
internal sealed record StyleRule(string Element, IReadOnlyList<string> Classes, IReadOnlyList<KeyValuePair<string, string>> Set)
{
    public bool Fits(string element, string[] classes) => (Element.Length == 0 || Element == element) && Classes.All(c => classes.Contains(c, StringComparer.Ordinal));

    public static IEnumerable<StyleRule> Of((string Selectors, string Body) rule)
    {
        var set = rule.Body.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(p => p.Split(':', 2, StringSplitOptions.TrimEntries)).Where(p => p.Length == 2).Select(p => KeyValuePair.Create(p[0], p[1])).ToList();
        foreach (string selector in rule.Selectors.Split(',', StringSplitOptions.TrimEntries))
        {
            string own = selector[(selector.LastIndexOf(' ') + 1)..];
            string[] parts = own.Split('.');
            if (own is not ("*" or ".drawing")) yield return new(parts[0], parts[1..], set);
        }
    }
}
