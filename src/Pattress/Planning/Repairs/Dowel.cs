using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning.Repairs;

/// <summary>A hardwood dowel glued into a hole in timber: its grain runs into the wall, and so does the screw in it.</summary>
internal static class Dowel
{
    /// <summary>How a bracket holds whose screws all sit in dowels; null where its plate could turn about them.</summary>
    /// <param name="place">The bracket as it was planned: its holes, and the layers of the wall there.</param>
    public static Hold? Holds(BracketActions bracket, BracketAnswer place, FixingSize size, Ask ask)
    {
        int[] used = [.. place.Holes.Select(h => Nearest(bracket, h.At))];
        var spot = SpotOf(place);
        return new Forces(bracket, ask.ToeStrip).Of(used, size.Kind.HoldsBy, spot) is { } forces
            ? Planning.Holds.Worst(size, spot, forces, [.. used.Select(i => bracket.Plate.Holes[i])], bracket.Plate, ask, null) : null;
    }

    private static int Nearest(BracketActions bracket, Point at) =>
        Enumerable.Range(0, bracket.Plate.Holes.Count).MinBy(i => Square(bracket.At.X + bracket.Plate.Holes[i].X - at.X) + Square(bracket.At.Y + bracket.Plate.Holes[i].Y - at.Y));

    private static double Square(double x) => x * x;

    private static Spot SpotOf(BracketAnswer place)
    {
        var layers = place.Section.Layers;
        double face = layers.TakeWhile(l => l.Material != "timber").Sum(l => l.ThicknessMm);
        // As deep as the plan took it; the drawing's layer is no thinner than can be drawn.
        double depth = place.Working.FirstOrDefault(s => s.Symbol == "t_support")?.Value ?? layers.First(l => l.Material == "timber").ThicknessMm;
        return new(place.BuildUp, Behind.Timber, new(face, 0), Spread.None, Spread.None, new(depth, 0), Spread.None, "timber", layers) { AlongGrain = true };
    }
}
