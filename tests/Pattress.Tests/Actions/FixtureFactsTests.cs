using System.Globalization;
using Pattress.Actions;
using Pattress.Actions.Fixtures;
using static Pattress.Tests.Actions.FixtureSamples;

namespace Pattress.Tests.Actions;

public sealed class FixtureFactsTests
{
    // I-FABRIC: ranges of the trade (common practice, no source).
    [Theory]
    [InlineData("fabric.sheer", 50, 100), InlineData("fabric.medium", 200, 300), InlineData("fabric.velvet", 300, 450)]
    [InlineData("lining.standard", 130, 160), InlineData("lining.blackout", 230, 330)]
    [InlineData("interlining.light", 200, 400), InlineData("interlining.heavy", 200, 400)]
    public void Cloth_weighs_what_the_trade_says(string id, double least, double most) =>
        Assert.InRange(CsvTable.FromEmbedded("data/fixtures/weights.csv").Rows.Single(r => r["id"] == id).Number("value"), least, most);

    // I-FULL: trade guides disagree, from 1.5 gathered to 3 (common practice, no source).
    [Theory]
    [InlineData(1.5), InlineData(2), InlineData(2.5), InlineData(3)]
    public void Fullness_of_every_guide_is_allowed(double fullness) =>
        Assert.True(FixtureCatalogue.Find("curtain_pole")!.Field("fullness")!.Allows(fullness));

    // I-GRAB-US: 250 lbf = 1112.06 N at any point in any direction, ADA 609.8; no entry goes below it.
    [Fact]
    public void Grab_rail_cannot_be_entered_weaker_than_the_rule()
    {
        var kind = FixtureCatalogue.Find("grab_rail")!;
        Assert.True(kind.Field("pull_n")!.Min * kind.Field("dynamic_factor")!.Min >= 1112.06);
    }

    // I-13120: 1500 mm above the floor (secondary sources; the standard itself not seen).
    [Theory]
    [InlineData(1499, true), InlineData(1500, false)]
    public void Cord_within_a_childs_reach_is_said(double height, bool said) =>
        Assert.Equal(said, Of("cord_cleat", ("height_mm", height)).Load().Cautions.Any(c => c.Code == "caution_cord_within_reach"));

    [Fact]
    public void Over_a_bed_is_a_higher_class()
    {
        Assert.Equal(ConsequenceClass.Nuisance, Of("picture").Load().Class);
        Assert.Equal(ConsequenceClass.Hurts, (Of("picture") with { OverBed = true }).Load().Class);
        Assert.Equal(ConsequenceClass.HoldsPerson, (Of("grab_rail") with { OverBed = true }).Load().Class);
    }

    [Fact]
    public void What_was_entered_is_not_called_assumed()
    {
        var some = Of("hook", ("pull_n", 60)).Load().Assumptions.Select(a => a.Values[0].Text).ToList();
        Assert.DoesNotContain("field.pull_n", some);
        Assert.Contains("field.projection_mm", some);
        Assert.Contains("field.dynamic_factor", some);
    }

    [Fact]
    public void Measured_bracket_is_not_assumed()
    {
        Assert.True(Of("hook").Load().Brackets[0].Plate.Assumed);
        var plate = Of("hook", ("bracket_width_mm", 40), ("bracket_height_mm", 100), ("holes", 4)).Load().Brackets[0].Plate;
        Assert.False(plate.Assumed);
        Assert.Equal(4, plate.Holes.Count);
        Assert.All(plate.Holes, h => Assert.True(Math.Abs(h.X) < 20 && Math.Abs(h.Y) < 50));
    }

    [Fact]
    public void Every_row_of_the_tables_names_its_source()
    {
        foreach (string table in (string[])["kinds", "weights", "rails", "plates"])
            Assert.All(CsvTable.FromEmbedded($"data/fixtures/{table}.csv").Rows, r => Assert.NotEqual("", r["source"]));
    }

    [Fact]
    public void Holes_of_every_plate_lie_inside_it()
    {
        foreach (var kind in FixtureCatalogue.Kinds.Where(k => !k.LicensedTrade))
            for (int holes = 1; holes <= 8; holes++)
            {
                var plate = Of(kind.Id, ("holes", holes)).Load().Brackets[0].Plate;
                double right = plate.Outline.Max(p => p.X), top = plate.Outline.Max(p => p.Y);
                Assert.All(plate.Holes, h => Assert.True(Math.Abs(h.X) < right && Math.Abs(h.Y) < top, string.Create(CultureInfo.InvariantCulture, $"{kind.Id} {holes}")));
                Assert.Equal(holes, plate.Holes.Distinct().Count());
            }
    }
}
