using System.Text.Json;
using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Doors;

namespace Pattress.Brackets;

/// <summary>Bracket documents: forces on the fixings of one bracket, as JSON in and JSON out.</summary>
public static class BracketDocument
{
    /// <summary>Answers a document; every problem of it is reported at once.</summary>
    public static Outcome<BracketReport> Answer(string json)
    {
        var problems = new ProblemList();
        var bytes = Door.Bytes(json, DoorLimits.Usual, problems);
        using var document = problems.IsEmpty ? Door.Parse(bytes, DoorLimits.Usual, problems) : null;
        return document is null ? Outcome<BracketReport>.Refused(problems.Problems) : Answer(document.RootElement);
    }

    /// <summary>Answers a document that is parsed already.</summary>
    public static Outcome<BracketReport> Answer(JsonElement json)
    {
        var problems = new ProblemList();
        var entry = BracketReader.Document.Read(json, JsonPath.Root, problems);
        var bracket = entry is null ? null : BracketReader.Build(entry, problems);
        return bracket is null ? Outcome<BracketReport>.Refused(problems.Problems) : BracketCalculation.Answer(bracket);
    }

    /// <summary>The JSON Schema keywords of the input, into the schema object that is open.</summary>
    public static void WriteSchema(Utf8JsonWriter json) => BracketReader.Document.WriteKeywords(json);

    /// <summary>The answer as a JSON document.</summary>
    public static string Json(BracketReport report, bool indented = true) => JsonOut.Text(json => Write(json, report), indented);

    /// <summary>Writes the answer as one JSON object.</summary>
    public static void Write(Utf8JsonWriter json, BracketReport report)
    {
        json.WriteStartObject();
        json.WriteObjects("fixings", report.Fixings, WriteFixing);
        json.WriteNumber("contact_n", report.Contact.Contact);
        json.WriteNumber("contact_area_mm2", report.Contact.Area);
        json.WriteNumber("pressure_max_mpa", report.Contact.PressureMax);
        json.WriteMaybe("pressure_worst_mpa", report.PressureWorst);
        json.WriteNumber("residual", report.Contact.Residual);
        json.WriteStartObject("gap");
        json.WriteNumber("at_origin_mm", report.Contact.U0);
        json.WriteNumber("per_mm_x", report.Contact.U1);
        json.WriteNumber("per_mm_y", report.Contact.U2);
        json.WriteEndObject();
        json.WriteObjects("assumptions", report.Assumed, ReasonJson.Write);
        json.WriteObjects("cautions", report.Cautions, ReasonJson.Write);
        json.WriteEndObject();
    }

    private static void WriteFixing(Utf8JsonWriter json, FixingForces f)
    {
        json.WriteNumber("tension_n", f.Tension);
        json.WriteNumber("shear_n", f.Shear.Size);
        json.WriteNumber("shear_x_n", f.Shear.X);
        json.WriteNumber("shear_y_n", f.Shear.Y);
        json.WriteMaybe("tension_worst_n", f.TensionWorst);
        json.WriteMaybe("shear_with_play_n", f.ShearWithPlay);
        json.WriteMaybe("tension_with_prying_n", f.TensionWithPrying);
    }
}
