using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>
/// The bent end of Newton's step is of third order, which a wrong third derivative would not be (Chebyshev's method; any textbook of
/// numerical analysis): ten times nearer to the balance it leaves a thousandth of the residual, Newton's own step a hundredth.
/// </summary>
public class ContactBendTests
{
    [Theory]
    [InlineData(0, 1000, 6000)]
    [InlineData(100, 5000, 3000)]
    [InlineData(-80, 2000, 9000)]
    public void A_bent_step_is_of_third_order(double n, double mx, double my)
    {
        var (bent, newton) = (Left(n, mx, my, 1e-2, true) / Left(n, mx, my, 1e-3, true), Left(n, mx, my, 1e-2, false) / Left(n, mx, my, 1e-3, false));
        Assert.InRange(bent, 700, 1400);
        Assert.InRange(newton, 70, 140);
    }

    /// <summary>What one step leaves out of balance from so far beside the balance.</summary>
    private static double Left(double n, double mx, double my, double beside, bool isBent)
    {
        var plate = Plate.Rectangle(-40, 40, -50, 50);
        FixingPoint[] fixings = [new(-30, -40, 600), new(30, -40, 900), new(-30, 40, 600), new(30, 40, 600)];
        var bed = new Bed(1.5);
        var raw = ContactScale.AboutCentre(plate, new BracketLoad(n, mx, my));
        var scale = ContactScale.Of(plate, fixings, bed, raw);
        var scaled = new ScaledFixing[4];
        scale.Scale(fixings, scaled);
        var energy = scale.Energy(plate, scaled, bed, raw, new double[plate.X.Length]);
        var whole = energy.WholePlate(plate.Whole);
        Triple balance = ContactDescent.Descend(ref energy, whole, energy.Glued(whole));
        Triple u = balance.Plus(beside * balance.Largest, new Triple(0.3, -0.5, 0.7));
        energy.Evaluate(u);
        Assert.Equal(2, energy.Cuts);
        Assert.True(Factors3.TryOf(energy.Second, 0, out var factors));
        Triple p = factors.Descent(energy.Gradient);
        if (isBent) ContactDescent.Bent(ref energy, u, p, factors);
        else energy.Evaluate(u.Plus(1, p));
        return energy.Imbalance;
    }
}
