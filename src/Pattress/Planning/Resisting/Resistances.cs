using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>What is asked of one fixing: size, spot, how long the load lasts, how damp, how thick the plate in front.</summary>
public sealed record Asked(FixingSize Size, Spot Spot, LoadDuration Duration, string Moisture, int ServiceClass, string Standards, double PlateMm, int Group);

/// <summary>What one fixing carries: the minimum over its mechanisms, by what it is set into.</summary>
public static class Resistances
{
    public static FixingCarries Of(
        FixingSize size, Spot spot, Ask ask, LoadDuration duration, IReadOnlyList<Point> holes, BracketPlate plate, Trace? trace)
    {
        var asked = new Asked(size, spot, duration, ask.Moisture, ask.Settings.ServiceClass, ask.Settings.Standards, plate.ThicknessMm, holes.Count);
        return spot.Behind switch
        {
            Behind.Timber => InTimber.Carries(asked, trace),
            Behind.SteelStud or Behind.SteelLintel => InSteel.Carries(asked, trace),
            Behind.Masonry or Behind.Aerated or Behind.Dab => InMasonry.Carries(asked, trace),
            Behind.MasonryBehindGap => ThroughGap.Carries(asked, trace),
            _ => InBoard.Carries(asked, SharedPerimeter(size, spot, holes), trace),
        };
    }

    /// <summary>
    /// Fixings closer than their bearing width plus twice the thickness share one perimeter: the part of its own that each
    /// keeps, from 1/n (all at one place) to 1.
    /// </summary>
    private static double SharedPerimeter(FixingSize size, Spot spot, IReadOnlyList<Point> holes)
    {
        double reach = size.BearingDiameterMm + 2 * spot.Face.Mean, least = 1;
        foreach (var a in holes)
        {
            double share = 1;
            foreach (var b in holes)
            {
                double apart = Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
                if (a != b && apart < reach) share += 1 - apart / reach;
            }
            least = Math.Min(least, 1 / share);
        }
        return least;
    }
}
