using Pattress.Actions;
using Pattress.Actions.Fixtures;

namespace Pattress.Tests.Actions;

public sealed class FixtureCatalogueTests
{
    // The things that the work asks for: common practice, no source.
    [Theory]
    [InlineData("curtain_pole"), InlineData("curtain_track"), InlineData("roller_blind"), InlineData("roman_blind")]
    [InlineData("venetian_blind"), InlineData("vertical_blind"), InlineData("cord_cleat"), InlineData("pelmet")]
    [InlineData("shutter"), InlineData("coat_rack"), InlineData("stair_gate"), InlineData("shelf"), InlineData("floating_shelf")]
    [InlineData("picture"), InlineData("mirror"), InlineData("screen"), InlineData("cabinet"), InlineData("radiator")]
    [InlineData("towel_rail"), InlineData("grab_rail"), InlineData("handrail"), InlineData("hook"), InlineData("free")]
    public void Kind_is_there_and_ours(string id) => Assert.False(FixtureCatalogue.Find(id)!.LicensedTrade);

    [Theory]
    [InlineData("basin", "plumber"), InlineData("boiler", "gas_engineer"), InlineData("water_heater", "plumber_and_electrician")]
    public void Licensed_trade_is_refused_with_whom_to_call(string id, string trade)
    {
        var refusal = FixtureCatalogue.Find(id)!.Refusal!;
        Assert.Equal("licensed_trade", refusal.Code);
        Assert.Equal("trade." + trade, refusal.Values[1].Text);
    }

    [Fact]
    public void Rails_that_hold_people_are_the_highest_class() =>
        Assert.Equal(["stair_gate", "grab_rail", "handrail"],
            FixtureCatalogue.Kinds.Where(k => k.Class == ConsequenceClass.HoldsPerson).Select(k => k.Id));

    [Fact]
    public void Every_default_is_allowed_and_has_a_source()
    {
        foreach (var field in FixtureCatalogue.Kinds.SelectMany(k => k.Fields))
        {
            if (field.Default is { } number) Assert.True(field.Allows(number), field.Name);
            if (field.DefaultWord.Length > 0) Assert.True(field.Allows(field.DefaultWord), field.Name);
            bool hasDefault = field.Default != null || field.DefaultWord.Length > 0;
            Assert.True(!hasDefault || field.Source.Length > 0, field.Name);
            Assert.False(hasDefault && field.Required, field.Name);
        }
    }

    [Fact]
    public void Units_stand_in_the_names()
    {
        foreach (var field in FixtureCatalogue.Kinds.SelectMany(k => k.Fields))
            Assert.True(UnitFits(field), field.Name);
    }

    [Fact]
    public void Names_are_unique_within_a_kind()
    {
        foreach (var kind in FixtureCatalogue.Kinds)
            Assert.Equal(kind.Fields.Count, kind.Fields.Select(f => f.Name).Distinct().Count());
    }

    private static bool UnitFits(FixtureField f) => f.Dimension switch
    {
        FieldDimension.Length => f.Name.EndsWith("_mm", StringComparison.Ordinal),
        FieldDimension.Mass => f.Name.EndsWith("_kg", StringComparison.Ordinal),
        FieldDimension.Force => f.Name.EndsWith("_n", StringComparison.Ordinal),
        _ => !f.Name.EndsWith("_mm", StringComparison.Ordinal) && !f.Name.EndsWith("_kg", StringComparison.Ordinal),
    };
}
