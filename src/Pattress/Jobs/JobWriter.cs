using System.Text.Json;
using Pattress.Actions.Fixtures;

namespace Pattress.Jobs;

/// <summary>Writes a job as a document of the current version; reading it again gives the same job.</summary>
public static class JobWriter
{
    /// <summary>The document's text, indented.</summary>
    public static string Write(Job job) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("pattress_job", Job.Version);
        json.WriteMaybe("id", job.Id);
        json.WriteMaybe("title", job.Title);
        json.WriteStartObject("settings");
        WriteSettings(json, job.Settings);
        json.WriteEndObject();
        json.WriteObjects("walls", job.Walls, WallWriter.Write);
        json.WriteObjects("fixtures", job.Fixtures, WriteFixture);
        json.WriteSome("stock", job.Stock, WriteStock);
        json.WriteSome("prices", job.Prices, MoneyWriter.Price);
        json.WriteSome("actuals", job.Actuals, MoneyWriter.Actual);
        json.WriteSome("trials", job.Trials, TrialBuilder.Write);
        json.WriteSome("proofs", job.Proofs, TrialBuilder.Write);
        DoneWriter.Write(json, job.Done);
        json.WriteEndObject();
    });

    private static void WriteSettings(Utf8JsonWriter json, Settings settings)
    {
        json.WriteString("standards", settings.Standards);
        json.WriteStartObject("editions");
        foreach (var field in Editions.Fields) json.WriteString(field.Field, field.Of(settings.Editions));
        json.WriteEndObject();
        json.WriteString("units", settings.Units);
        json.WriteString("english", settings.English);
        json.WriteString("currency", settings.Currency);
        json.WriteNumber("life_years", settings.LifeYears);
        json.WriteStartObject("partial_factors");
        json.WriteNumber("permanent", settings.GammaPermanent);
        json.WriteNumber("variable", settings.GammaVariable);
        json.WriteEndObject();
        json.WriteNumber("service_class", settings.ServiceClass);
        json.WriteNumber("minute_price", (double)settings.MinutePrice);
        json.WriteStartObject("house");
        json.WriteString("kind", settings.House);
        json.WriteMaybe("year_built", settings.YearBuilt);
        json.WriteEndObject();
        MoneyWriter.Buying(json, settings.Buying);
        MoneyWriter.Quote(json, settings.Quote);
    }

    private static void WriteFixture(Utf8JsonWriter json, Fixture fixture)
    {
        json.WriteString("id", fixture.Id);
        json.WriteString("wall", fixture.Wall);
        json.WriteString("what", fixture.What);
        json.WriteMaybe("name", fixture.Name);
        json.WritePoint("at_mm", fixture.At);
        json.WriteSome("brackets", fixture.Brackets, (j, at) => j.WritePoint("at_mm", at));
        foreach (var field in FixtureCatalogue.Find(fixture.What)?.Fields ?? []) WriteField(json, fixture, field);
        json.WriteIfYes("removable", fixture.Removable);
        json.WriteIfYes("over_bed", fixture.OverBed);
        json.WriteIfYes("toe_strip", fixture.ToeStrip);
    }

    private static void WriteField(Utf8JsonWriter json, Fixture fixture, FixtureField field)
    {
        string name = FixtureShapes.NameOf(field);
        if (fixture.Numbers.TryGetValue(field.Name, out double number)) json.WriteNumber(name, number);
        else if (fixture.Words.TryGetValue(field.Name, out string? word)) json.WriteString(name, word);
    }

    private static void WriteStock(Utf8JsonWriter json, StockItem item)
    {
        json.WriteString("fixing", item.Fixing);
        json.WriteNumber("count", item.Count);
        if (item.Least > 0) json.WriteNumber("least", item.Least);
    }
}
