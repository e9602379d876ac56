using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using static Pattress.Tests.Actions.FixtureSamples;

namespace Pattress.Tests.Actions;

/// <summary>Everything that the catalogue and the loads say by code has a text.</summary>
public sealed class FixtureTextTests
{
    [Fact]
    public void Kinds_and_trades_have_names() => AllSaid(FixtureCatalogue.Kinds.SelectMany(k =>
        k.LicensedTrade ? new[] { "fixture." + k.Id, "trade." + k.Trade, "licensed_trade" } : ["fixture." + k.Id]));

    [Fact]
    public void Entries_have_a_label_a_measure_and_words() => AllSaid(FixtureCatalogue.Kinds.SelectMany(k => k.Fields)
        .SelectMany(f => f.Words.Select(w => "word." + w).Append("field." + f.Name).Append(f.Measure)));

    [Fact]
    public void Cases_cautions_and_assumptions_have_sentences()
    {
        foreach (var actions in EveryWord())
        {
            AllSaid(actions.Brackets.SelectMany(b => b.Cases).Select(c => "case." + c.Code));
            AllSaid(actions.Cautions.Select(c => c.Code));
            AllSaid(actions.Assumptions.Select(a => a.Code));
            AllSaid(actions.Assumptions.SelectMany(a => a.Values).Where(v => v.As == Shown.Name).Select(v => v.Text));
        }
    }

    // Each kind with each word of each of its lists, on the wall and, where it can hang there, on the ceiling.
    private static IEnumerable<Pattress.Actions.FixtureActions> EveryWord() =>
        from kind in FixtureCatalogue.Kinds
        from words in kind.Fields.SelectMany(f => f.Words.Select(w => (f.Name, w))).DefaultIfEmpty(("", ""))
        from wall in kind.OnCeiling ? new[] { FixtureSamples.Wall, Ceiling } : [FixtureSamples.Wall]
        select (Of(kind.Id).Words(words) with { OverBed = true }).Load(wall);

    private static void AllSaid(IEnumerable<string> codes) =>
        Assert.Equal([], codes.Where(c => !Texts.Has(c)).Distinct());
}
