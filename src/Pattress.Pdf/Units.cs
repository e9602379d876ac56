namespace Pattress.Pdf;

/// <summary>Lengths: mm on paper, pt in the file (1/72 in), px in drawings (1/96 in).</summary>
internal static class Units
{
    public const double MmPerInch = 25.4, MmPerPt = MmPerInch / 72, MmPerPx = MmPerInch / 96, PtPerPx = 72.0 / 96;

    public static double Pt(double mm) => mm / MmPerPt;
}
