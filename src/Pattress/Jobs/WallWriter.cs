using System.Text.Json;

namespace Pattress.Jobs;

/// <summary>Writes a wall with all that is known of it.</summary>
internal static class WallWriter
{
    public static void Write(Utf8JsonWriter json, Wall wall)
    {
        json.WriteString("id", wall.Id);
        json.WriteMaybe("name", wall.Name);
        json.WriteString("kind", wall.Kind);
        json.WriteNumber("width_mm", wall.WidthMm);
        json.WriteNumber("height_mm", wall.HeightMm);
        json.WriteMaybe("thickness_mm", wall.ThicknessMm);
        json.WriteString("other_side", wall.OtherSide);
        json.WriteSome("readings", wall.Readings, WriteReading);
        json.WriteSome("openings", wall.Openings, (j, o) => WritePart(j, o.Id, o.Kind, o.Area));
        json.WriteSome("services", wall.Services, WriteService);
        json.WriteSome("zones", wall.Zones, (j, z) => WritePart(j, z.Id, z.Kind, z.Area));
        json.WriteSome("old_holes", wall.OldHoles, WriteOldHole);
        json.WriteSome("strip_checks", wall.StripChecks, WriteCheck);
        WriteCondition(json, wall.Condition);
        if (wall.BuiltAs != "usual") json.WriteString("built_as", wall.BuiltAs);
    }

    private static void WritePart(Utf8JsonWriter json, string id, string kind, Rect area)
    {
        json.WriteString("id", id);
        json.WriteString("kind", kind);
        json.WriteArea(area);
    }

    private static void WriteService(Utf8JsonWriter json, Service service)
    {
        WritePart(json, service.Id, service.Kind, service.Area);
        if (service.Face != "this") json.WriteString("face", service.Face);
    }

    private static void WriteOldHole(Utf8JsonWriter json, OldHole hole)
    {
        json.WriteString("id", hole.Id);
        json.WritePoint("at_mm", hole.At);
        json.WriteNumber("diameter_mm", hole.DiameterMm);
    }

    private static void WriteCheck(Utf8JsonWriter json, StripCheck check)
    {
        json.WriteString("id", check.Id);
        json.WriteString("strip", check.Strip);
        json.WriteString("how", check.How);
    }

    private static void WriteCondition(Utf8JsonWriter json, Condition condition)
    {
        json.WriteStartObject("condition");
        json.WriteString("moisture", condition.Moisture);
        json.WriteString("coating", condition.Coating);
        json.WriteString("sampled", condition.Sampled);
        json.WriteEndObject();
    }

    private static void WriteReading(Utf8JsonWriter json, Reading reading)
    {
        json.WriteString("id", reading.Id);
        json.WriteString("kind", reading.Kind);
        if (reading.At is { } at) json.WritePoint("at_mm", at);
        if (reading.From is { } from) json.WritePoint("from_mm", from);
        if (reading.To is { } to) json.WritePoint("to_mm", to);
        if (reading.Kind == "magnet") WriteHits(json, reading.Hits);
        json.WriteMaybe("sound", reading.Sound);
        json.WriteMaybe("met", reading.Met);
        json.WriteMaybe("diameter_mm", reading.DiameterMm);
        json.WriteMaybe("solid_at_mm", reading.SolidAtMm);
        json.WriteMaybe("depth_mm", reading.DepthMm);
        json.WriteMaybe("swarf", reading.Swarf);
        json.WriteMaybe("thickness_mm", reading.ThicknessMm);
        json.WriteMaybe("void_mm", reading.VoidMm);
        json.WriteMaybe("signal", reading.Signal);
        json.WriteMaybe("shows", reading.Shows);
        json.WriteMaybe("found", reading.Found);
        json.WriteMaybe("says", reading.Says);
        json.WriteIfYes("withdrawn", reading.Withdrawn);
    }

    private static void WriteHits(Utf8JsonWriter json, IReadOnlyList<Point> hits)
    {
        json.WriteStartArray("hits_mm");
        foreach (var hit in hits) json.WritePoint(hit);
        json.WriteEndArray();
    }
}
