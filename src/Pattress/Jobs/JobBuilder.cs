using Pattress.Actions.Fixtures;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Turns a checked document into a job; nothing can go wrong any more.</summary>
internal static class JobBuilder
{
    public static Job Build(Entry document) => new()
    {
        Id = document.TextOr("id", ""),
        Title = document.TextOr("title", ""),
        Settings = SettingsOf(document),
        Walls = All(document, "walls", WallBuilder.Build),
        Fixtures = All(document, "fixtures", FixtureOf),
        Stock = All(document, "stock", s => new StockItem(s.TextOf("fixing"), (int)s.NumberOf("count"), (int)s.NumberOr("least", 0))),
        Prices = All(document, "prices", MoneyBuilder.Price),
        Actuals = All(document, "actuals", MoneyBuilder.Actual),
        Trials = All(document, "trials", TrialBuilder.Test),
        Proofs = All(document, "proofs", TrialBuilder.Proof),
        Done = document["done"] is { } done ? DoneBuilder.Build(done) : new WorkDone(),
    };

    internal static IReadOnlyList<T> All<T>(Entry entry, string name, Func<Entry, T> build) => [.. entry.ItemsOf(name).Select(build)];

    internal static bool IsYes(Entry entry, string name) => entry.TextOr(name, "no") == "yes";

    /// <summary>The settings of a document; the usual ones where it has none.</summary>
    internal static Settings SettingsOf(Entry document)
    {
        if (document["settings"] is not { } entry) return new Settings();
        var usual = new Settings();
        var factors = entry["partial_factors"];
        var house = entry["house"];
        return new Settings
        {
            Standards = entry.TextOr("standards", usual.Standards),
            Editions = entry["editions"] is { } editions ? EditionsOf(editions) : usual.Editions,
            Units = entry.TextOr("units", usual.Units),
            English = entry.TextOr("english", usual.English),
            Currency = entry.TextOr("currency", usual.Currency),
            LifeYears = entry.NumberOr("life_years", usual.LifeYears),
            GammaPermanent = factors?.MaybeNumber("permanent") ?? usual.GammaPermanent,
            GammaVariable = factors?.MaybeNumber("variable") ?? usual.GammaVariable,
            ServiceClass = (int)entry.NumberOr("service_class", usual.ServiceClass),
            MinutePrice = entry.MaybeNumber("minute_price") is { } price ? (decimal)price : usual.MinutePrice,
            YearBuilt = (int?)house?.MaybeNumber("year_built"),
            House = house?.MaybeText("kind") ?? usual.House,
            Buying = MoneyBuilder.Buying(entry["buying"]),
            Quote = MoneyBuilder.Quote(entry["quote"]),
        };
    }

    private static Editions EditionsOf(Entry entry) =>
        Editions.Fields.Aggregate(new Editions(), (e, f) => entry.MaybeText(f.Field) is { } edition ? f.With(e, edition) : e);

    private static Fixture FixtureOf(Entry entry)
    {
        var fields = FixtureCatalogue.Find(entry.TextOf("what"))!.Fields.Where(f => entry[FixtureShapes.NameOf(f)] is not null).ToList();
        return new Fixture
        {
            Id = entry.TextOf("id"),
            Wall = entry.TextOf("wall"),
            What = entry.TextOf("what"),
            Name = entry.TextOr("name", ""),
            At = entry.MaybePoint("at_mm")!.Value,
            Brackets = All(entry, "brackets", b => b.MaybePoint("at_mm")!.Value),
            Numbers = fields.Where(f => f.Words.Count == 0).ToDictionary(f => f.Name, f => entry.NumberOf(FixtureShapes.NameOf(f)), StringComparer.Ordinal),
            Words = fields.Where(f => f.Words.Count > 0).ToDictionary(f => f.Name, f => entry.TextOf(FixtureShapes.NameOf(f)), StringComparer.Ordinal),
            Removable = IsYes(entry, "removable"),
            OverBed = IsYes(entry, "over_bed"),
            ToeStrip = IsYes(entry, "toe_strip"),
        };
    }
}
