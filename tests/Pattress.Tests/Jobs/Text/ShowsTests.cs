using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs.Text;

/// <summary>Expected values by hand from 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216 N (exact by definition).</summary>
public class ShowsTests
{
    private static readonly Settings Metric = new();
    private static readonly Settings Imperial = new() { Units = "imperial" };

    [Theory]
    [InlineData(12.5, "12.5 mm", "1/2 in")]
    [InlineData(12.7, "12.5 mm", "1/2 in")]
    [InlineData(25.4, "25.5 mm", "1 in")]
    [InlineData(1412, "1,412 mm", "55 9/16 in")]
    [InlineData(0, "0 mm", "0 in")]
    [InlineData(-0.1, "0 mm", "0 in")]
    [InlineData(-31, "-31 mm", "-1 1/4 in")]
    [InlineData(2438.4, "2,438 mm", "96 in")]
    public void Lengths(double mm, string metric, string imperial) =>
        Assert.Equal((metric, imperial), (Shows.Length(mm, Metric), Shows.Length(mm, Imperial)));

    [Theory]
    [InlineData(0.35, "0.35 kg", "0.77 lb")]
    [InlineData(4.26, "4.3 kg", "9.4 lb")]
    [InlineData(54, "54 kg", "119 lb")]
    public void Masses(double kg, string metric, string imperial) =>
        Assert.Equal((metric, imperial), (Shows.Mass(kg, Metric), Shows.Mass(kg, Imperial)));

    [Theory]
    [InlineData(5.44, "5.4 N", "1.2 lbf")]
    [InlineData(300, "300 N", "67 lbf")]
    [InlineData(999.7, "1 kN", "225 lbf")]
    [InlineData(1100, "1.1 kN", "247 lbf")]
    public void Forces(double n, string metric, string imperial) =>
        Assert.Equal((metric, imperial), (Shows.Force(n, Metric), Shows.Force(n, Imperial)));

    [Theory]
    [InlineData(0, "0 %")]
    [InlineData(1e-9, "under 0.0001 %")]
    [InlineData(0.000023, "0.002 %")]
    [InlineData(0.0042, "0.4 %")]
    [InlineData(0.034, "3.4 %")]
    [InlineData(0.88, "88 %")]
    [InlineData(0.9951, "99.5 %")]
    [InlineData(0.99995, "over 99.9 %")]
    [InlineData(1, "100 %")]
    [InlineData(1.24, "124 %")]
    public void A_doubt_is_never_rounded_away(double fraction, string text) => Assert.Equal(text, Shows.Percent(fraction));

    [Theory]
    [InlineData("1.2", "GBP", "£1.20")]
    [InlineData("1234.565", "EUR", "€1,234.57")]
    [InlineData("0", "USD", "$0.00")]
    [InlineData("7", "SEK", "SEK 7.00")]
    public void Money(string amount, string currency, string text) =>
        Assert.Equal(text, Shows.Money(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), currency));

    [Theory]
    [InlineData(2, "2")]
    [InlineData(0.123456, "0.123")]
    [InlineData(1234.5, "1,235")]
    [InlineData(12.34, "12.3")]
    public void Plain_numbers_have_three_figures(double number, string text) => Assert.Equal(text, Shows.ThreeFigures(number));
}
