using System.Text.Json;
using Pattress.Jobs.Doors;
using Pattress.Jobs.Text;
using Pattress.Jobs.WallFile;
using Pattress.Supports;

namespace Pattress.Jobs.Locate;

/// <summary>The documents of <c>pattress locate</c>: a scan in, where the supports are out.</summary>
public static class LocateDocument
{
    /// <summary>JSON Schema of the scan, draft 2020-12.</summary>
    public static string Schema { get; } = SchemaText.Of(LocateShapes.Scan, "Pattress scan",
        "What was heard, felt and found along the lines of one wall or ceiling. Positions are measured along the line from its left end.");

    /// <summary>Reads a scan strictly; every problem is reported at once.</summary>
    public static Outcome<LineScan> Read(string json) => LocateReader.Read(json);

    /// <summary>The answer as JSON, or the problems of the input.</summary>
    /// <param name="explain">Adds what each reading moved.</param>
    /// <param name="indented">False: one line, for batches.</param>
    public static Outcome<string> Answer(string json, bool explain = false, bool indented = true)
    {
        var scan = Read(json);
        return scan.Value is { } s ? Outcome<string>.Of(Write(SupportModel.Infer(s), explain ? SupportModel.Explain(s) : [], indented)) : Outcome<string>.Refused(scan.Problems);
    }

    /// <summary>Writes a belief, with what each reading moved where that is wanted.</summary>
    public static string Write(SupportBelief belief, IReadOnlyList<LineInfluence> influences, bool indented = true) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("supports", belief.Supports, Support);
        json.WriteObjects("pitch", belief.Pitches, (j, p) => { Number(j, "mm", p.Mm); Number(j, "probability", p.Probability); });
        json.WriteObjects("zones", belief.Zones, Zone);
        Next(json, belief.Next);
        Number(json, "probability_steel", belief.SteelProbability);
        Number(json, "probability_dabs", belief.DabProbability);
        if (belief.ParallelProbability > 0) Number(json, "probability_parallel", belief.ParallelProbability);
        if (belief.AlongProbability > 0) Number(json, "probability_along", belief.AlongProbability);
        json.WriteObjects("contradictions", belief.Contradictions, Contradiction);
        json.WriteObjects<Reason>("assumptions", belief.Supports.Any(s => s.Basis == "assumed") ? [new("assumed_rates"), new("assumed_supports")] : [new("assumed_rates")], Reason);
        json.WriteSome("readings", influences, Influence);
        json.WriteEndObject();
    }, indented);

    private static void Support(Utf8JsonWriter json, SupportFound s)
    {
        Number(json, "centre_mm", s.CentreMm);
        Number(json, "sd_mm", s.SdMm);
        Number(json, "probability", s.Probability);
        json.WriteString("material", s.Material);
        Number(json, "width_mm", s.WidthMm);
        json.WriteString("basis", s.Basis);
    }

    private static void Zone(Utf8JsonWriter json, ZoneBelief z)
    {
        Number(json, "from_mm", z.FromMm);
        Number(json, "to_mm", z.ToMm);
        Number(json, "best_mm", z.BestMm);
        Number(json, "probability", z.Probability);
        Number(json, "probability_usable", z.UsableProbability);
        Number(json, "probability_none", z.NoneProbability);
        Number(json, "best_usable_mm", z.BestUsableMm);
        Number(json, "best_probability_usable", z.BestUsableProbability);
    }

    private static void Next(Utf8JsonWriter json, LineCheck? next)
    {
        json.WritePropertyName("next");
        if (next is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteString("kind", next.Kind);
        Number(json, "at_mm", next.AtMm);
        Reason(json, next.Why);
        json.WriteNumber("zone", next.Zone);
        Number(json, "before", next.Before);
        Number(json, "after", next.After);
        Number(json, "minutes", next.Minutes);
        json.WriteEndObject();
    }

    private static void Influence(Utf8JsonWriter json, LineInfluence i)
    {
        json.WriteString("id", i.Reading);
        Number(json, "log_odds", i.LogOdds);
        Number(json, "at_mm", i.AtMm);
        Number(json, "without", i.Without);
        Number(json, "with", i.With);
        Reason(json, ChangeWords.OfSupport(i));
    }

    private static void Contradiction(Utf8JsonWriter json, LineContradiction c)
    {
        Reason(json, c.What);
        json.WriteTexts("readings", c.Readings);
    }

    private static void Reason(Utf8JsonWriter json, Reason why)
    {
        json.WriteString("code", why.Code);
        json.WriteString("why", Texts.Sentence(why, new Settings()));
    }

    /// <summary>Numbers to nine decimals: thresholds of readers then act alike on phone and server.</summary>
    private static void Number(Utf8JsonWriter json, string name, double value) => json.WriteNumber(name, Math.Round(value, 9));
}
