using Pattress.Supports;

namespace Pattress.Tests.Supports;

public class NormalTests
{
    /// <summary>scipy.stats.norm.cdf.</summary>
    [Theory]
    [InlineData(-7.9, 1.394517146659261e-15), InlineData(-6.53, 3.2884845679542437e-11), InlineData(-4.01, 3.0359373926618173e-05), InlineData(-3.03, 0.0012227686935922595), InlineData(-2.97, 0.0014889987452374632), InlineData(-1.2345, 0.10850832336267019), InlineData(-0.03126, 0.48753109509092685), InlineData(0.031, 0.51236523016303359), InlineData(0.7, 0.75803634777692697), InlineData(1.96, 0.97500210485177952), InlineData(3.01, 0.99869376155123057), InlineData(5.5, 0.99999998101043752)]
    public void Distribution_function_as_scipy_gives_it(double z, double below) => Assert.Equal(below, Normal.Below(z), below * 1e-13);

    /// <summary>By definition: never falls, and both sides add up to 1.</summary>
    [Fact]
    public void It_never_falls_and_both_sides_add_up()
    {
        double before = 0;
        for (int i = -8100; i <= 8100; i++)
        {
            double z = i / 1000.0, below = Normal.Below(z);
            Assert.InRange(below, before - 1e-15, 1);
            Assert.Equal(1, below + Normal.Below(-z), 2e-15);
            before = below;
        }

        Assert.Equal((0, 1), (Normal.Below(double.NegativeInfinity), Normal.Below(double.PositiveInfinity)));
        Assert.True(double.IsNaN(Normal.Below(double.NaN)));
    }
}
