using System.Text.Json;

namespace Pattress.Jobs;

/// <summary>Writes what was done on site; nothing where nothing was.</summary>
internal static class DoneWriter
{
    public static void Write(Utf8JsonWriter json, WorkDone done)
    {
        if (done.IsNothing) return;
        json.WriteStartObject("done");
        json.WriteSome("holes", done.Holes, WriteHole);
        json.WriteSome("cautions_read", done.Read, WriteRead);
        json.WriteSome("signed", done.Signed, WriteSignature);
        json.WriteEndObject();
    }

    private static void WriteHole(Utf8JsonWriter json, DrilledHole hole)
    {
        json.WriteString("id", hole.Id);
        json.WriteString("fixture", hole.Fixture);
        json.WriteNumber("bracket", hole.Bracket);
        json.WritePoint("at_mm", hole.At);
        json.WriteNumber("diameter_mm", hole.DiameterMm);
        json.WriteNumber("depth_mm", hole.DepthMm);
        json.WriteString("on", hole.On);
        json.WriteIfYes("withdrawn", hole.Withdrawn);
    }

    private static void WriteRead(Utf8JsonWriter json, CautionsRead read)
    {
        json.WriteString("id", read.Id);
        json.WriteString("wall", read.Wall);
        json.WriteTexts("codes", read.Codes);
        json.WriteString("on", read.On);
    }

    private static void WriteSignature(Utf8JsonWriter json, Signature signature)
    {
        json.WriteString("id", signature.Id);
        json.WriteMaybe("name", signature.Name);
        json.WriteString("sheet", signature.Sheet);
        json.WriteStartArray("strokes");
        foreach (var stroke in signature.Strokes)
        {
            json.WriteStartArray();
            foreach (var point in stroke) json.WritePoint(point);
            json.WriteEndArray();
        }
        json.WriteEndArray();
        json.WriteString("on", signature.On);
        json.WriteIfYes("withdrawn", signature.Withdrawn);
    }
}
