using Pattress.Papers.Drawings;

namespace Pattress.Papers.Documents;

/// <summary>A size of paper, mm, held upright.</summary>
public sealed record PaperSize(string Id, double WidthMm, double HeightMm)
{
    /// <summary>Margins left and right of what is written, mm: wider than any printer needs, room for a punch.</summary>
    public const double MarginMm = 16;

    /// <summary>Height of letters in drawings, px.</summary>
    public const double TextPx = 11.5;

    private const double PxPerMm = 96 / 25.4;

    /// <summary>ISO 216 A4.</summary>
    public static PaperSize A4 { get; } = new("a4", 210, 297);

    /// <summary>ANSI/ASME Y14.1 A, "letter": 8.5 in by 11 in.</summary>
    public static PaperSize Letter { get; } = new("letter", 215.9, 279.4);

    public static IReadOnlyList<PaperSize> All { get; } = [A4, Letter];

    /// <summary>The size with this id, or null.</summary>
    public static PaperSize? Find(string id) => All.FirstOrDefault(s => s.Id == id);

    /// <summary>What a job is printed on unless somebody says otherwise.</summary>
    public static PaperSize For(Jobs.Settings settings) => settings.Units == "imperial" ? Letter : A4;

    /// <summary>Width between the margins, mm.</summary>
    public double ContentMm => WidthMm - 2 * MarginMm;

    /// <summary>For a drawing as wide as the paper's text.</summary>
    public Sizing Wide => new(ContentMm * PxPerMm, TextPx);

    /// <summary>For a drawing of half that width.</summary>
    public Sizing Half => new((ContentMm / 2 - 2) * PxPerMm, TextPx);
}
