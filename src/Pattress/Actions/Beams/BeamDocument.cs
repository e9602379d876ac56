using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Doors;

namespace Pattress.Actions.Beams;

/// <summary>Beam documents: reactions of a rail on brackets, with envelopes, as JSON in and JSON out.</summary>
public static class BeamDocument
{
    /// <summary>Answers a document; every problem of it is reported at once.</summary>
    public static Outcome<BeamReport> Answer(string json)
    {
        var problems = new ProblemList();
        var bytes = Door.Bytes(json, DoorLimits.Usual, problems);
        using var document = problems.IsEmpty ? Door.Parse(bytes, DoorLimits.Usual, problems) : null;
        return document is null ? Outcome<BeamReport>.Refused(problems.Problems) : Answer(document.RootElement);
    }

    /// <summary>Answers a document that is parsed already.</summary>
    public static Outcome<BeamReport> Answer(JsonElement json)
    {
        var problems = new ProblemList();
        var entry = BeamReader.Document.Read(json, JsonPath.Root, problems);
        var beam = entry is null ? null : BeamReader.Build(entry, problems);
        return beam is null ? Outcome<BeamReport>.Refused(problems.Problems) : Calculate(beam);
    }

    /// <summary>The JSON Schema keywords of the input, into the schema object that is open.</summary>
    public static void WriteSchema(Utf8JsonWriter json) => BeamReader.Document.WriteKeywords(json);

    /// <summary>The answer as a JSON document.</summary>
    public static string Json(BeamReport report, bool indented = true) => JsonOut.Text(json => Write(json, report), indented);

    /// <summary>Writes the answer as one JSON object.</summary>
    public static void Write(Utf8JsonWriter json, BeamReport report)
    {
        json.WriteStartObject();
        Numbers(json, "reactions_n", report.Standing.Reactions);
        json.WriteNumber("moment_max_nmm", report.Standing.MomentMax.Value);
        json.WriteNumber("moment_min_nmm", report.Standing.MomentMin.Value);
        json.WriteNumber("deflection_max_mm", report.Standing.DeflectionMax.Value);
        json.WriteNumber("deflection_max_at_mm", report.Standing.DeflectionMax.At);
        json.WriteNumber("deflection_min_mm", report.Standing.DeflectionMin.Value);
        json.WriteMaybe("deflection_long_mm", report.DeflectionLong);
        json.WriteMaybe("creep_factor", report.CreepFactor);
        if (report.Envelope is { } envelope) WriteEnvelope(json, envelope, report.Moments);
        if (report.Range is { } range) WriteRange(json, range);
        json.WriteObjects("cautions", report.Cautions, ReasonJson.Write);
        json.WriteEndObject();
    }

    private static void WriteEnvelope(Utf8JsonWriter json, EnvelopeAnswer envelope, MomentRange? moments)
    {
        json.WriteStartObject("envelope");
        Numbers(json, "max_n", envelope.Reactions.Select(r => r.Max.Value));
        Numbers(json, "min_n", envelope.Reactions.Select(r => r.Min.Value));
        Numbers(json, "at_mm", envelope.Reactions.Select(r => r.Max.At));
        Numbers(json, "min_at_mm", envelope.Reactions.Select(r => r.Min.At));
        if (moments is { } m) WriteMoments(json, m);
        json.WriteString("method", envelope.Exact ? "exact" : "stepped");
        json.WriteEndObject();
    }

    private static void WriteMoments(Utf8JsonWriter json, MomentRange m)
    {
        json.WriteNumber("moment_max_nmm", m.Max.Value);
        json.WriteNumber("moment_max_at_mm", m.Max.At);
        json.WriteNumber("moment_min_nmm", m.Min.Value);
        json.WriteNumber("moment_min_at_mm", m.Min.At);
    }

    private static void WriteRange(Utf8JsonWriter json, RangeAnswer range)
    {
        json.WriteStartObject("stiffness_range");
        Numbers(json, "max_n", range.Max);
        Numbers(json, "min_n", range.Min);
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double v in values) json.WriteNumberValue(v);
        json.WriteEndArray();
    }

    private static Outcome<BeamReport> Calculate(BeamCase c)
    {
        if (BeamSolver.Solve(c.Beam, c.Standing) is not { } standing) return Outcome<BeamReport>.Refused(Moves());
        var envelope = c.Moving is null ? null : BeamEnvelope.Of(c.Beam, c.Standing, c.Moving);
        var range = c.Ranges is null ? null : SupportRange.Of(c.Beam, c.Ranges, c.Standing, c.Moving);
        if ((c.Moving is not null && envelope is null) || (c.Ranges is not null && range is null)) return Outcome<BeamReport>.Refused(Moves());
        double? later = c.CreepFactor is { } creep ? standing.DeflectionMax.Value * (1 + creep) : null;
        var moments = envelope is { Exact: true } ? MomentEnvelope.Of(c.Beam, c.Standing, c.Moving!) : envelope?.SteppedMoments;
        return Outcome<BeamReport>.Of(new BeamReport(standing, envelope, range, later, Cautions(c, standing, envelope, range)) { Moments = moments, CreepFactor = c.CreepFactor });
    }

    private static List<Reason> Cautions(BeamCase c, BeamAnswer standing, EnvelopeAnswer? envelope, RangeAnswer? range)
    {
        var list = new List<Reason>();
        for (int i = 0; i < c.Beam.Supports.Count; i++)
            if ((envelope?.Reactions[i].Min.Value ?? standing.Reactions[i]) is var r && r < 0) list.Add(new("support_pulls_down", Said.Count(i + 1), Said.Force(-r)));
            else if (c.Beam.Supports[i].OneSided && r == 0) list.Add(new("support_lifts_off", Said.Count(i + 1)));
        if (Nearest(c.Beam) is { } pair) list.Add(new("supports_nearly_coincide", Said.Count(pair.First + 1), Said.Count(pair.Second + 1), Said.Length(Together * c.Beam.Length)));
        if (envelope is { Exact: false }) list.Add(new("envelope_stepped"));
        if (range is { Exhaustive: false }) list.Add(new("stiffness_worst_case_searched"));
        return list;
    }

    // Two supports so near to one another, as a share of the beam, that no rail has them.
    private const double Together = 1e-3;

    private static (int First, int Second)? Nearest(Beam beam)
    {
        for (int i = 1; i < beam.Supports.Count; i++)
            for (int j = 0; j < i; j++)
                if (Math.Abs(beam.Supports[i].At - beam.Supports[j].At) < Together * beam.Length) return (j, i);
        return null;
    }

    private static Problem Moves() => new(
        "beam_mechanism", "$.supports", "the beam can move freely", "two supports or a clamped one, no more hinges than they bear, and loads that cups can carry");
}
