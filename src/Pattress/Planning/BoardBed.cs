using Pattress.Brackets;
using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>
/// The bed under a bracket whose fixing holds in the same gypsum board, by plate theory with the interval that is left (docs/theory/brackets.md):
/// the dish from toe to fixing, and where the board is glued to foam, the board on its foam as well.
/// </summary>
internal static class BoardBed
{
    // A toe of 40 by 15 mm, 40 to 60 mm from its fixing (assumed). The dish does not ask for the span.
    private const double ToeMm2 = 40 * 15, ReachLowMm = 40, ReachHighMm = 60, AnySpanMm = 600;

    /// <summary>N/mm³, rounded outwards to two figures.</summary>
    public static Interval Of(Spot spot)
    {
        var board = BoardGive.Gypsum(spot.Face.Mean, AnySpanMm) with { Layers = Math.Max(1, spot.Layers.Count(l => l.Material == "board")) };
        var dish = BoardUnderPlate.BesideFixing(board, ToeMm2, ReachLowMm, ReachHighMm);
        double foam = spot.Behind == Behind.BoardFoam ? spot.Layers.Where(l => l.Material == "foam").Sum(l => l.ThicknessMm) : 0;
        if (foam <= 0) return Outwards(dish.Low, dish.High);
        var modulus = StiffnessData.Foam;
        var glued = BoardUnderPlate.OnFoam(board, ToeMm2, modulus.Low / foam, modulus.High / foam);
        return Outwards(Math.Min(dish.Low, glued.Low), Math.Max(dish.High, glued.High));
    }

    private static Interval Outwards(double low, double high)
    {
        double a = Math.Pow(10, Math.Floor(Math.Log10(low)) - 1), b = Math.Pow(10, Math.Floor(Math.Log10(high)) - 1);
        return new(Math.Floor(low / a + 1e-9) * a, Math.Ceiling(high / b - 1e-9) * b);
    }
}
