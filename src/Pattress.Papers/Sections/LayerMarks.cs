using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Sections;

/// <summary>Each layer with a stroke of its own, so that none is known by colour alone.</summary>
internal static class LayerMarks
{
    public static IReadOnlyList<Mark> Of(SectionCut cut, Sheet sheet) => [.. cut.Layers.SelectMany(l => Layer(l, cut, sheet))];

    private static IEnumerable<Mark> Layer(CutLayer layer, SectionCut cut, Sheet sheet)
    {
        var area = new Rect(layer.From, -cut.HalfMm, layer.To - layer.From, 2 * cut.HalfMm);
        string material = layer.Layer.Material;
        yield return new RectMark("layer " + material, area) { Fact = Said(layer, sheet) };
        foreach (var mark in Texture(material, area, sheet)) yield return mark;
        yield return new LineMark("joint", new(layer.From, -cut.HalfMm), new(layer.From, cut.HalfMm));
        if (!layer.CutShort) yield return new LineMark("joint", new(layer.To, -cut.HalfMm), new(layer.To, cut.HalfMm));
        if (layer.Layer.SdMm > 0.5 && !layer.CutShort) foreach (var mark in Doubt(layer, cut)) yield return mark;
    }

    private static Fact Said(CutLayer layer, Sheet sheet) => new(
        sheet.Name("material." + layer.Layer.Material), sheet.Words("draw_behind_face", Pattress.Said.Length(layer.From)),
        layer.CutShort ? sheet.Words("draw_goes_on") : sheet.Words("draw_thick", Pattress.Said.Length(layer.Layer.ThicknessMm), Pattress.Said.Length(layer.Layer.SdMm)));

    private static IEnumerable<Mark> Doubt(CutLayer layer, SectionCut cut)
    {
        foreach (double sign in (double[])[-1, 1])
        {
            double x = layer.To + sign * layer.Layer.SdMm;
            if (x > layer.From && x < cut.DeepMm) yield return new LineMark("doubt", new(x, -cut.HalfMm), new(x, cut.HalfMm));
        }
    }

    private static IEnumerable<Mark> Texture(string material, Rect area, Sheet sheet) => material switch
    {
        "foam" => [new HatchMark("texture", area, sheet.Px(9)), new HatchMark("texture", area, sheet.Px(9), -1)],
        "timber" => [new HatchMark("texture grain", area, sheet.Px(7), 0)],
        "brick" => [new HatchMark("texture", area, sheet.Px(6))],
        "block" => [new HatchMark("texture", area, sheet.Px(11))],
        "aerated_block" => Dots(area, sheet.Px(11), sheet.Px(1.6)),
        "concrete" => [new HatchMark("texture", area, sheet.Px(12)), .. Dots(area, sheet.Px(17), sheet.Px(1.2))],
        "dab" => Dots(area, sheet.Px(8), sheet.Px(1)),
        "steel" => [new HatchMark("texture", area, sheet.Px(3))],
        "laths" => Laths(area),
        "plaster" or "skim" => [],
        "tile" => [new HatchMark("texture", area, sheet.Px(5), -1)],
        _ => [],
    };

    private static IEnumerable<Mark> Dots(Rect a, double apart, double radius)
    {
        bool odd = false;
        for (double x = a.X + apart / 2; x < a.Right - radius; x += apart, odd = !odd)
            for (double y = a.Y + (odd ? apart : apart / 2); y < a.Top - radius; y += apart) yield return new CircleMark("texture dot", new(x, y), radius);
    }

    /// <summary>Laths of about 25 mm with gaps of about 8 mm.</summary>
    private static IEnumerable<Mark> Laths(Rect a)
    {
        for (double y = a.Y + 4; y + 25 <= a.Top; y += 33) yield return new RectMark("texture lath", new Rect(a.X, y, a.Width, 25));
    }
}

/// <summary>Names and thicknesses below the section, each on a leader of its own.</summary>
internal static class LayerLabels
{
    public static IReadOnlyList<Mark> Of(SectionCut cut, Sheet sheet)
    {
        var marks = new List<Mark>();
        for (int i = 0; i < cut.Layers.Count; i++)
        {
            var layer = cut.Layers[^(i + 1)];
            double x = (layer.From + layer.To) / 2, y = -cut.HalfMm - sheet.TextMm * (1.2 + 1.45 * i);
            marks.Add(new PathMark("leader", [new(x, -cut.HalfMm + sheet.Px(6)), new(x, y + sheet.TextMm * .3), new(x + sheet.Px(6), y + sheet.TextMm * .3)]));
            marks.Add(new TextMark("label", new(x + sheet.Px(9), y), Text(layer, sheet)));
        }

        return marks;
    }

    private static string Text(CutLayer layer, Sheet sheet) => layer.CutShort
        ? sheet.Name("material." + layer.Layer.Material)
        : sheet.Words("draw_layer_label", Said.Name("material." + layer.Layer.Material), Said.Length(layer.Layer.ThicknessMm));
}
