using System.Text.Json;
using Pattress.Actions;

namespace Pattress.Jobs.Plans;

/// <summary>One bracket, as the plan's document has it.</summary>
internal static class BracketJson
{
    public static void Write(Utf8JsonWriter json, BracketAnswer bracket, PlanWords says)
    {
        json.WriteNumber("index", bracket.Index);
        json.WritePoint("at_mm", bracket.At);
        WriteFixing(json, bracket, says);
        json.WriteString("build_up", bracket.BuildUp);
        json.WriteNumber("build_up_probability", bracket.BuildUpProbability);
        json.WriteBoolean("into_support", bracket.IntoSupport);
        WriteToe(json, bracket);
        json.WriteObjects("holes", bracket.Holes, WriteHole);
        json.WriteObjects("forces", bracket.Forces, WriteForce);
        json.WriteObjects("alternatives", bracket.Alternatives, (j, other) => WriteAlternative(j, other, says));
        json.WriteObjects("rejected", bracket.Rejected, (j, other) => WriteRejected(j, other, says));
        WriteSection(json, bracket.Section);
        WritePlate(json, bracket.Plate);
        json.WriteObjects("working", bracket.Working, StepJson.Write);
    }

    private static void WriteFixing(Utf8JsonWriter json, BracketAnswer bracket, PlanWords says)
    {
        if (bracket.Fixing is { } fixing) json.WriteString("fixing", fixing);
        else json.WriteNull("fixing");
        json.WriteMaybe("fixing_name", bracket.Fixing is null ? null : says.Name(bracket.Fixing));
        says.Write(json, bracket.Why);
        json.WriteNumber("count", bracket.Count);
        json.WriteNumber("utilisation", bracket.Utilisation);
        json.WriteString("governs", bracket.Governs);
        json.WriteString("load_case", bracket.LoadCase);
        json.WriteNumber("probability_of_failure", bracket.ProbabilityOfFailure);
        json.WriteNumber("mean_to_permitted", bracket.MeanToPermitted);
        json.WriteString("basis", bracket.Basis);
        json.WriteMaybe("next_kind", bracket.NextKind);
        json.WriteNumber("price_each", bracket.PriceEach);
    }

    private static void WriteToe(Utf8JsonWriter json, BracketAnswer bracket)
    {
        json.WriteNumber("toe_pressure_mpa", bracket.ToePressureMpa);
        json.WriteNumber("toe_utilisation", bracket.ToeUtilisation);
    }

    private static void WriteHole(Utf8JsonWriter json, HoleAnswer hole)
    {
        json.WritePoint("at_mm", hole.At);
        json.WriteNumber("diameter_mm", hole.DiameterMm);
        json.WriteNumber("depth_mm", hole.DepthMm);
        json.WriteString("bit", hole.Bit);
        json.WriteNumber("support_probability", hole.SupportProbability);
        json.WriteMaybe("strip", hole.Strip);
    }

    private static void WriteForce(Utf8JsonWriter json, FixingForce force)
    {
        json.WritePoint("at_mm", force.At);
        json.WriteNumber("tension_n", force.TensionN);
        json.WriteNumber("shear_n", force.ShearN);
    }

    private static void WriteAlternative(Utf8JsonWriter json, AlternativeAnswer other, PlanWords says)
    {
        json.WriteString("fixing", other.Fixing);
        json.WriteString("fixing_name", says.Name(other.Fixing));
        json.WriteNumber("utilisation", other.Utilisation);
        json.WriteString("governs", other.Governs);
        json.WriteNumber("probability_of_failure", other.ProbabilityOfFailure);
        json.WriteNumber("price_each", other.PriceEach);
        json.WriteNumber("sure", other.Sure);
    }

    private static void WriteRejected(Utf8JsonWriter json, RejectedAnswer other, PlanWords says)
    {
        json.WriteString("fixing", other.Fixing);
        says.Write(json, other.Why);
    }

    private static void WriteSection(Utf8JsonWriter json, WallSection section)
    {
        json.WriteStartObject("section");
        json.WriteString("build_up", section.BuildUp);
        json.WriteObjects("layers", section.Layers, (j, layer) =>
        {
            j.WriteString("material", layer.Material);
            j.WriteNumber("thickness_mm", layer.ThicknessMm);
            j.WriteNumber("sd_mm", layer.SdMm);
        });
        json.WriteMaybe("fixing", section.Fixing);
        json.WriteNumber("screw_length_mm", section.ScrewLengthMm);
        json.WriteNumber("embedment_mm", section.EmbedmentMm);
        json.WriteEndObject();
    }

    private static void WritePlate(Utf8JsonWriter json, BracketPlate plate)
    {
        json.WriteStartObject("plate");
        WritePoints(json, "outline_mm", plate.Outline);
        WritePoints(json, "holes_mm", plate.Holes);
        json.WriteNumber("thickness_mm", plate.ThicknessMm);
        json.WriteNumber("arm_mm", plate.ArmMm);
        json.WriteBoolean("assumed", plate.Assumed);
        json.WriteEndObject();
    }

    private static void WritePoints(Utf8JsonWriter json, string name, IReadOnlyList<Point> points)
    {
        json.WriteStartArray(name);
        foreach (var point in points) json.WritePoint(point);
        json.WriteEndArray();
    }
}
