using Pattress.Quantities;

namespace Pattress.Tests.Quantities;

public class QuantityTextTests
{
    // Expected: exact definitions of the international inch, pound and of standard gravity (NIST SP 811), worked by hand.
    [Theory]
    [InlineData("12 kg", Dimension.MassKg, 12)]
    [InlineData("0.3 kN", Dimension.ForceN, 300)]
    [InlineData("25 lbf", Dimension.ForceN, 111.2055403815125)]
    [InlineData("1/2 in", Dimension.LengthMm, 12.7)]
    [InlineData("2.4 m", Dimension.LengthMm, 2400)]
    [InlineData("2.4m", Dimension.LengthMm, 2400)]
    [InlineData("1 1/2 in", Dimension.LengthMm, 38.1)]
    [InlineData("1-1/2 in", Dimension.LengthMm, 38.1)]
    [InlineData("5/8\"", Dimension.LengthMm, 15.875)]
    [InlineData("5 ft 3 in", Dimension.LengthMm, 1600.2)]
    [InlineData("5'3\"", Dimension.LengthMm, 1600.2)]
    [InlineData("5 ft 3 1/2 in", Dimension.LengthMm, 1612.9)]
    [InlineData("-5 ft 3 in", Dimension.LengthMm, -1600.2)]
    [InlineData("3 lb 8 oz", Dimension.MassKg, 1.587573295)]
    [InlineData("  7 mm ", Dimension.LengthMm, 7)]
    [InlineData("1e3 mm", Dimension.LengthMm, 1000)]
    [InlineData("300 gsm", Dimension.ArealMassGPerM2, 300)]
    [InlineData("10 lbf ft", Dimension.MomentNmm, 13558.17948331400)]
    [InlineData("0.74 kN/m", Dimension.LineLoadNPerMm, 0.74)]
    [InlineData("30 °", Dimension.AngleDeg, 30)]
    [InlineData("0.85", Dimension.Number, 0.85)]
    [InlineData("3/4", Dimension.Number, 0.75)]
    public void Reads_what_people_write(string text, Dimension dimension, double expected)
    {
        Assert.True(QuantityText.TryParse(text, dimension, out double value, out string code), code);
        Assert.Equal(expected, value, Math.Abs(expected) * 1e-14);
    }

    [Theory]
    [InlineData("", Dimension.LengthMm, "quantity_empty")]
    [InlineData("   ", Dimension.LengthMm, "quantity_empty")]
    [InlineData("12", Dimension.LengthMm, "quantity_without_unit")]
    [InlineData("1 1/2", Dimension.LengthMm, "quantity_without_unit")]
    [InlineData("12 kg", Dimension.ForceN, "quantity_wrong_unit")]
    [InlineData("12 KG", Dimension.MassKg, "quantity_wrong_unit")]
    [InlineData("12 M", Dimension.LengthMm, "quantity_wrong_unit")]
    [InlineData("3 in 5 ft", Dimension.LengthMm, "quantity_wrong_unit")]
    [InlineData("3 in 5 in", Dimension.LengthMm, "quantity_wrong_unit")]
    [InlineData("3 kN 5 N", Dimension.ForceN, "quantity_wrong_unit")]
    [InlineData("mm", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("NaN mm", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("Infinity mm", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("1e999 mm", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("1e308 mm", Dimension.LengthMm, "quantity_too_large")]
    [InlineData("1e308 m", Dimension.LengthMm, "quantity_too_large")]
    [InlineData("1/0 in", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("1 3/2 in", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("1,5 m", Dimension.LengthMm, "quantity_wrong_unit")]
    [InlineData("5 ft -3 in", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("--5 mm", Dimension.LengthMm, "quantity_not_a_number")]
    [InlineData("0.85 mm", Dimension.Number, "quantity_not_a_number")]
    public void Refuses_the_rest(string text, Dimension dimension, string expected)
    {
        Assert.False(QuantityText.TryParse(text, dimension, out double value, out string code));
        Assert.Equal(expected, code);
        Assert.Equal(0, value);
    }

    [Fact]
    public void A_bare_number_is_in_the_own_unit_on_the_command_line_only()
    {
        Assert.True(QuantityText.TryParseOrBare("5.5", Dimension.LengthMm, out double value, out _));
        Assert.Equal(5.5, value);
        Assert.False(QuantityText.TryParseOrBare("NaN", Dimension.LengthMm, out _, out _));
    }

    [Theory]
    [InlineData(Dimension.LengthMm, "a number, or text with a unit: mm, cm, m, in, ft, yd")]
    [InlineData(Dimension.ForceN, "a number, or text with a unit: N, kN, lbf, kgf, kip")]
    [InlineData(Dimension.Number, "a number without unit")]
    public void Says_what_is_allowed(Dimension dimension, string expected) => Assert.Equal(expected, QuantityText.Allowed(dimension));

    [Fact]
    public void Every_unit_reads_back_and_says_itself()
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            foreach (var unit in Units.Of(dimension))
            {
                Assert.True(QuantityText.TryParse($"2.5 {unit.Text}", dimension, out double value, out string code), $"{unit.Text}: {code}");
                Assert.Equal(2.5 * unit.Factor, value, 1e-12 * value);
            }
        }
    }
}
