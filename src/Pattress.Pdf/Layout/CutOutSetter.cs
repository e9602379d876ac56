using Pattress.Papers.Documents;
using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>Sets labels to cut out.</summary>
internal sealed class CutOutSetter(Flow flow)
{
    private const double WidthMm = 90, PadMm = 4;

    private static readonly Letters Large = new(Face.Bold, 20), Small = new(Face.Regular, 9);

    public void Set(CutOut label)
    {
        var large = Large.Lines(label.Large, WidthMm - 2 * PadMm);
        var small = label.Small.SelectMany(s => Small.Lines(s, WidthMm - 2 * PadMm)).ToList();
        double height = large.Count * Large.LineMm + small.Count * Small.LineMm + 2 * PadMm;
        flow.Need(height + 5);
        flow.Gap(3);
        double x = flow.Left, y = flow.Y;
        flow.Aside(Dashed(x, y, height));
        flow.Y += PadMm;
        Lines(large, Large);
        Lines(small, Small);
        flow.Y = y + height + 2;
    }

    private void Lines(IReadOnlyList<string> lines, Letters letters)
    {
        flow.Add(new Open(Role.Paragraph));
        foreach (string line in lines)
        {
            flow.Add(new Run(flow.Left + PadMm, flow.Y + letters.BaseMm, line, letters.Face, letters.SizePt));
            flow.Y += letters.LineMm;
        }
        flow.Add(new Close());
    }

    private static IReadOnlyList<Ink> Dashed(double x, double y, double height) =>
    [
        new Rule(x, y, x + WidthMm, y, 0.2, true), new Rule(x + WidthMm, y, x + WidthMm, y + height, 0.2, true),
        new Rule(x + WidthMm, y + height, x, y + height, 0.2, true), new Rule(x, y + height, x, y, 0.2, true),
    ];
}
