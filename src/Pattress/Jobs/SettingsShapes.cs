using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Shapes of the settings and of a wall's condition.</summary>
internal static class SettingsShapes
{
    public static ObjectShape Settings { get; } = new(
        Field.Optional("standards", new WordShape("eurocode_uk", "us")),
        Field.Optional("editions", Editions(), "Which edition of each document; none: a document that would stand in is not used."),
        Field.Optional("units", new WordShape("metric", "imperial"), "For what people read."),
        Field.Optional("english", new WordShape([.. Text.Texts.Tongues]), "The English, or another language there is a file of."),
        Field.Optional("currency", new WordShape("GBP", "EUR", "USD", "CAD", "AUD", "NZD", "CHF", "DKK", "NOK", "SEK", "PLN", "CZK"), "ISO 4217."),
        Field.Optional("life_years", new NumberShape(1, 100), "Reference period of every probability of failure."),
        Field.Optional("partial_factors", Factors(), "EN 1990 Table A1.2(B); the American set counts every action once."),
        Field.Optional("service_class", new IntegerShape(1, 3), "EN 1995-1-1 2.3.1.3."),
        Field.Optional("minute_price", new NumberShape(0, 1000), "What a minute of the fitter's time costs."),
        Field.Optional("house", House()),
        Field.Optional("buying", MoneyShapes.Buying, "What is wanted of the shopping."),
        Field.Optional("quote", MoneyShapes.Quote, "What a quote goes by."));

    public static ObjectShape Condition { get; } = new(
        Field.Optional("moisture", new WordShape("dry", "damp", "fresh_plaster", "unknown")),
        Field.Optional("coating", new WordShape("plain", "textured", "tiled", "panelled", "unknown")),
        Field.Optional("sampled", new WordShape("not_sampled", "clear", "found"), "Sampled for asbestos."));

    private static ObjectShape Editions() =>
        new([.. Jobs.Editions.Fields.Select(f => Field.Optional(f.Field, new WordShape(f.Allowed)))]);

    private static ObjectShape Factors() => new(
        Field.Optional("permanent", new NumberShape(1, 3)),
        Field.Optional("variable", new NumberShape(1, 3)));

    private static ObjectShape House() => new(
        Field.Optional("kind", new WordShape("terraced", "semi", "detached", "flat", "bungalow", "unknown")),
        Field.Optional("year_built", new IntegerShape(1400, 2100)));
}
