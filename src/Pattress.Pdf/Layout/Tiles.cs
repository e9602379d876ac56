using Pattress.Jobs;

namespace Pattress.Pdf.Layout;

/// <summary>How a drawing at true size is cut into parts that overlap, mm on the wall.</summary>
/// <param name="Left">x of the first part's left edge; <paramref name="Top"/> y of the uppermost part's upper edge.</param>
internal sealed record Tiles(double Left, double Top, int Across, int Down, double Width, double Height)
{
    /// <summary>Neighbouring parts show this much of each other, mm.</summary>
    public const double OverlapMm = 12;

    public static Tiles Of(Rect view, double width, double height)
    {
        int across = Count(view.Width, width), down = Count(view.Height, height);
        // What is left over is shared out on both sides.
        double spareX = Covered(across, width) - view.Width, spareY = Covered(down, height) - view.Height;
        return new(view.X - spareX / 2, view.Top + spareY / 2, across, down, width, height);
    }

    /// <summary>The part's area on the wall; columns from the left, rows from above.</summary>
    public Rect Area(int column, int row) => new(Left + column * (Width - OverlapMm), Top - row * (Height - OverlapMm) - Height, Width, Height);

    /// <summary>Register crosses: two in each strip that two parts share, at the same places of the wall on both.</summary>
    public IEnumerable<Point> Crosses()
    {
        for (int c = 0; c < Across; c++)
            for (int r = 0; r < Down; r++)
            {
                var a = Area(c, r);
                foreach (double share in (double[])[0.2, 0.8])
                {
                    if (c + 1 < Across) yield return new(a.Right - OverlapMm / 2, a.Y + share * a.Height);
                    if (r + 1 < Down) yield return new(a.X + share * a.Width, a.Y + OverlapMm / 2);
                }
            }
    }

    private static int Count(double length, double part) => length <= part ? 1 : 1 + (int)Math.Ceiling((length - part) / (part - OverlapMm) - 1e-9);

    private static double Covered(int count, double part) => part + (count - 1) * (part - OverlapMm);
}
