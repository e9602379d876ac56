using System.Text.Json;
using Pattress.Fixings;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Own;

/// <summary>The catalogue of the user's own trials as a document: <c>{"pattress_trials":1,"tests":[{"job","title","test":{…},"out"}]}</c>.</summary>
public static class CatalogueDocument
{
    private const int Version = 1, Most = 20_000;

    private static readonly ObjectShape Entry = new(
        Field.Required("job", new TextShape(200), "Id of the job that it came from."),
        Field.Optional("title", new TextShape(200)),
        Field.Required("test", TrialShapes.Test),
        Field.Optional("out", JobShapes.YesNo, "Taken out: kept and not used."));

    private static readonly ObjectShape Document = new(
        Field.Required("pattress_trials", new IntegerShape(Version, Version), "Version of the document."),
        Field.Required("tests", new ListShape(Entry, 0, Most)));

    /// <summary>Reads a catalogue, or gives every problem of the document.</summary>
    public static Outcome<TrialCatalogue> Read(string json)
    {
        var read = Door.Read(json, Document, DoorLimits.Usual with { MaxBytes = 8_000_000 });
        if (read.Value is not { } document) return Outcome<TrialCatalogue>.Refused(read.Problems);
        var problems = document.ItemsOf("tests").Select(Unknown).OfType<Problem>().ToList();
        return problems.Count > 0 ? Outcome<TrialCatalogue>.Refused(problems) : Outcome<TrialCatalogue>.Of(new([.. document.ItemsOf("tests").Select(Test)]));
    }

    private static Problem? Unknown(Entry e) => e["test"]?["fixing"] is { } fixing && FixingCatalogue.FromEmbedded.Find(fixing.Text) is null
        ? new("unknown_fixing", fixing.Path.ToString(), fixing.Text, "kind and size of the catalogue, e.g. strap_toggle.medium") : null;

    private static CatalogueTest Test(Entry e) => new(e.TextOf("job"), e.TextOr("title", ""), TrialBuilder.Test(e["test"]!), JobBuilder.IsYes(e, "out"));

    /// <summary>The document's text.</summary>
    public static string Write(TrialCatalogue catalogue) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("pattress_trials", Version);
        json.WriteObjects("tests", catalogue.Tests, WriteTest);
        json.WriteEndObject();
    });

    private static void WriteTest(Utf8JsonWriter json, CatalogueTest t)
    {
        json.WriteString("job", t.Job);
        json.WriteMaybe("title", t.Title);
        json.WriteStartObject("test");
        TrialBuilder.Write(json, t.Test);
        json.WriteEndObject();
        json.WriteIfYes("out", t.Out);
    }
}
