using CsCheck;
using Pattress.Quantities;

namespace Pattress.Tests.Quantities;

public class QuantityTests
{
    [Fact]
    public void Unit_systems_agree() => Gen.Double[-1e6, 1e6].Sample(v =>
    {
        Same(Length.FromInches(v).Millimetres, v * 25.4);
        Same(Force.FromPoundsForce(v).Newtons, v * 4.4482216152605);
        Same(Stress.FromPsi(v).Megapascals, v * 4.4482216152605 / 645.16);
        Same(Mass.FromPounds(v).Kilograms, v * 0.45359237);
        Same(Moment.FromPoundForceInches(v).NewtonMillimetres, v * 4.4482216152605 * 25.4);
        Same(LineLoad.FromPoundsForcePerFoot(v).NewtonsPerMillimetre, v * 4.4482216152605 / 304.8);
        Same(Angle.FromDegrees(v).Radians, v * Math.PI / 180);
    });

    [Fact]
    public void Every_unit_comes_back() => Gen.Double[-1e6, 1e6].Sample(v =>
    {
        Same(Length.FromFeet(v).Feet, v);
        Same(Area.FromSquareInches(v).SquareInches, v);
        Same(Force.FromKilogramsForce(v).KilogramsForce, v);
        Same(Density.FromPoundsPerCubicFoot(v).PoundsPerCubicFoot, v);
        Same(ArealMass.FromOuncesPerSquareYard(v).OuncesPerSquareYard, v);
        Same(ArealMass.FromGramsPerSquareMetre(v).GramsPerSquareMetre, v);
        Same(Stress.FromKilonewtonsPerSquareMetre(v).KilonewtonsPerSquareMetre, v);
    });

    [Fact]
    public void Default_is_zero() => Assert.Equal(Force.FromNewtons(0), default);

    private static void Same(double actual, double expected) =>
        Assert.True(Math.Abs(actual - expected) <= 1e-12 * Math.Abs(expected), $"{actual:R} is not {expected:R}");
}
