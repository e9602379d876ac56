using System.Text.Json;

namespace Pattress.Jobs.Plans;

/// <summary>What is known of a wall, as the plan's document has it.</summary>
internal static class WallJson
{
    public static void Write(Utf8JsonWriter json, WallAnswer wall, PlanWords says)
    {
        json.WriteString("id", wall.Id);
        json.WriteString("name", wall.Name);
        json.WriteString("kind", wall.Kind);
        json.WriteNumber("width_mm", wall.WidthMm);
        json.WriteNumber("height_mm", wall.HeightMm);
        WriteBuildUps(json, wall.BuildUps, says);
        json.WriteNumber("board_mm", wall.BoardMm);
        json.WriteNumber("board_sd_mm", wall.BoardSdMm);
        json.WriteNumber("void_mm", wall.VoidMm);
        json.WriteNumber("void_sd_mm", wall.VoidSdMm);
        json.WriteObjects("supports", wall.Supports, WriteSupport);
        json.WriteObjects("pitch", wall.Pitches, WritePitch);
        json.WriteObjects("zones", wall.Zones, (j, zone) => WriteZone(j, zone, says));
        json.WriteObjects("strips", wall.Strips, WriteStrip);
        WriteNext(json, wall.Next, says);
        json.WriteObjects("notes", wall.Notes, says.Write);
    }

    private static void WriteBuildUps(Utf8JsonWriter json, IReadOnlyList<BuildUpChance> buildUps, PlanWords says) =>
        json.WriteObjects("build_ups", buildUps, (j, chance) =>
        {
            j.WriteString("build_up", chance.BuildUp);
            j.WriteString("name", says.Name(chance.BuildUp));
            j.WriteNumber("probability", chance.Probability);
        });

    private static void WriteSupport(Utf8JsonWriter json, SupportBand band)
    {
        json.WriteNumber("centre_mm", band.CentreMm);
        json.WriteNumber("sd_mm", band.SdMm);
        json.WriteNumber("width_mm", band.WidthMm);
        json.WriteNumber("probability", band.Probability);
    }

    private static void WritePitch(Utf8JsonWriter json, PitchChance pitch)
    {
        json.WriteNumber("mm", pitch.Mm);
        json.WriteNumber("probability", pitch.Probability);
    }

    private static void WriteZone(Utf8JsonWriter json, ZoneAnswer zone, PlanWords says)
    {
        json.WriteString("id", zone.Id);
        json.WriteString("kind", zone.Kind);
        json.WriteArea(zone.Area);
        WriteBuildUps(json, zone.BuildUps, says);
    }

    private static void WriteStrip(Utf8JsonWriter json, CableStrip strip)
    {
        json.WriteString("id", strip.Id);
        json.WriteString("kind", strip.Kind);
        json.WriteArea(strip.Area);
        json.WriteMaybe("checked", strip.Checked);
    }

    private static void WriteNext(Utf8JsonWriter json, CheckToDo? next, PlanWords says)
    {
        if (next is null) return;
        json.WriteStartObject("next");
        CheckJson.Write(json, next, says);
        json.WriteEndObject();
    }
}
