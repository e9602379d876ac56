using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Planning.Views;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Jobs.WallFile;

/// <summary>Writes what is known of walls as the answer of <c>pattress wall</c>.</summary>
internal static class WallReportJson
{
    /// <summary>Build-ups less likely than this are not listed.</summary>
    private const double Least = 0.001;

    public static string Write(IReadOnlyList<WallReport> reports, HoleLog? log, Settings settings, bool one, bool indented) => JsonOut.Text(json =>
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        if (one) Wall(json, reports[0], says);
        else json.WriteObjects("walls", reports, (j, r) => Wall(j, r, says));
        if (log is not null) Log(json, log, says);
        json.WriteEndObject();
    }, indented);

    private static void Wall(Utf8JsonWriter json, WallReport report, PlanWords says)
    {
        json.WriteString("id", report.Wall.Id);
        json.WriteString("name", report.Wall.Name);
        json.WriteString("kind", report.Wall.Kind);
        says.Write(json, report.Is);
        json.WriteObjects("families", Families(report.Belief), (j, f) => Named(j, "family", f.Family, f.Probability, says));
        json.WriteObjects("build_ups", [.. report.Belief.BuildUps.Where(b => b.Probability >= Least)], (j, b) => BuildUp(j, b, says));
        json.WriteObjects("supports", report.Line.Supports, Support);
        if (report.Line.OtherWay is { } other) Turned(json, report.Line.ParallelProbability, other);
        json.WriteObjects("pitch", report.Line.Pitches, (j, p) => { Number(j, "mm", p.Mm); Number(j, "probability", p.Probability); });
        json.WriteObjects("zones", report.Zones, (j, z) => Zone(j, z, says));
        Next(json, report.Next, says);
        json.WriteObjects("contradictions", Contradictions(report), (j, c) => { says.Write(j, c.What); j.WriteTexts("readings", c.Readings); });
        if (report.Belief.FromHouse is { } shift) House(json, shift, says);
        json.WriteSome("readings", report.Readings, (j, r) => Reading(j, r, says));
        json.WriteObjects("cautions", [new Reason("wall_cables"), new Reason("wall_defers")], says.Write);
        json.WriteObjects<Reason>("assumptions", report.Rates is { } rates ? [new("assumed_rates"), rates] : [new("assumed_rates")], says.Write);
    }

    /// <summary>Ceilings: joists that lie one above the other along y instead, and the chance that they do.</summary>
    private static void Turned(Utf8JsonWriter json, double probability, SupportBelief other)
    {
        json.WriteStartObject("other_way");
        Number(json, "probability", probability);
        json.WriteObjects("supports", other.Supports, Support);
        json.WriteEndObject();
    }

    private static List<(string Family, double Probability)> Families(WallBelief belief) =>
        [.. belief.BuildUps.GroupBy(b => b.BuildUp.Family, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(b => b.Probability)))
            .OrderByDescending(f => f.Item2).ThenBy(f => f.Key, StringComparer.Ordinal)];

    private static List<(Reason What, IReadOnlyList<string> Readings)> Contradictions(WallReport report) =>
        [.. report.Belief.Contradictions.Select(c => (c.What, c.Readings)), .. report.Line.Contradictions.Select(c => (c.What, c.Readings))];

    private static void Named(Utf8JsonWriter json, string field, string id, double probability, PlanWords says)
    {
        json.WriteString(field, id);
        json.WriteString("name", says.Name(id));
        Number(json, "probability", probability);
    }

    private static void BuildUp(Utf8JsonWriter json, BuildUpBelief b, PlanWords says)
    {
        Named(json, "build_up", b.BuildUp.Id, b.Probability, says);
        Number(json, "board_mm", b.Board.MeanMm);
        Number(json, "board_sd_mm", b.Board.SdMm);
        Number(json, "insulation_mm", b.InsulationMm);
        Number(json, "void_mm", b.Void.MeanMm);
        Number(json, "void_sd_mm", b.Void.SdMm);
        if (b.BehindAt is not { } at) return;
        Number(json, "solid_at_mm", at.MeanMm);
        Number(json, "solid_at_sd_mm", at.SdMm);
    }

    private static void Support(Utf8JsonWriter json, SupportFound s)
    {
        Number(json, "centre_mm", s.CentreMm);
        Number(json, "sd_mm", s.SdMm);
        Number(json, "width_mm", s.WidthMm);
        Number(json, "probability", s.Probability);
        json.WriteString("basis", s.Basis);
    }

    private static void Zone(Utf8JsonWriter json, BelievedZone zone, PlanWords says)
    {
        json.WriteString("id", zone.Id);
        json.WriteString("kind", zone.Kind);
        json.WriteArea(zone.Area);
        json.WriteObjects("build_ups", [.. zone.Believed.Where(b => b.Probability >= Least)], (j, b) => Named(j, "build_up", b.BuildUp.Id, b.Probability, says));
    }

    private static void Next(Utf8JsonWriter json, NextWallCheck next, PlanWords says)
    {
        json.WriteStartObject("next");
        json.WriteString("kind", next.Check.Length > 0 ? next.Check : "none");
        says.Write(json, next.Why);
        Number(json, "minutes", next.Minutes);
        Number(json, "before", next.Before);
        Number(json, "after", next.After);
        Number(json, "gain_minutes", next.GainMinutes);
        json.WriteEndObject();
    }

    private static void House(Utf8JsonWriter json, HouseShift shift, PlanWords says)
    {
        json.WriteStartObject("from_house");
        json.WriteString("build_up", shift.BuildUp);
        Number(json, "alone", shift.Alone);
        Number(json, "together", shift.Together);
        says.Write(json, shift.Why);
        json.WriteEndObject();
    }

    private static void Reading(Utf8JsonWriter json, ReadingChange change, PlanWords says)
    {
        json.WriteString("id", change.Reading);
        if (change.Wall is { } wall)
        {
            Number(json, "log_odds", wall.LogOdds);
            json.WriteString("family", wall.Family);
            Number(json, "without", wall.Without);
            Number(json, "with", wall.With);
        }
        if (change.Support is { } support)
        {
            Number(json, "support_log_odds", support.LogOdds);
            Number(json, "support_at_mm", support.AtMm);
            Number(json, "support_without", support.Without);
            Number(json, "support_with", support.With);
        }
        json.WriteObjects("changed", change.Says, says.Write);
    }

    /// <summary>What was expected of each hole and what it met, how true that was, and the rates as these holes re-estimate them.</summary>
    private static void Log(Utf8JsonWriter json, HoleLog log, PlanWords says)
    {
        json.WriteStartObject("holes");
        says.Write(json, log.Why);
        json.WriteObjects("log", log.Holes, (j, h) => { j.WriteString("reading", h.Id); Number(j, "predicted", h.Predicted); j.WriteString("found", h.Found ? "yes" : "no"); });
        Number(json, "brier", log.Report.Brier);
        Number(json, "log_score", log.Report.LogScore);
        Number(json, "calibration_error", log.Report.CalibrationError);
        json.WriteObjects("bins", log.Report.Bins, (j, b) =>
        {
            Number(j, "from", b.From);
            Number(j, "to", b.To);
            j.WriteNumber("count", b.Count);
            Number(j, "mean_predicted", b.MeanPredicted);
            Number(j, "share_found", b.ShareFound);
        });
        json.WriteObjects("rates", log.Rates, (j, r) => { j.WriteString("name", r.Name); j.WriteString("what", r.What); Number(j, "assumed", r.Assumed); Number(j, "now", r.Now); Number(j, "used", r.Used); Number(j, "prior_weight", r.PriorWeight); Number(j, "weight", r.Weight); });
        json.WriteEndObject();
    }

    /// <summary>Numbers to nine decimals: thresholds of readers then act alike on phone and server.</summary>
    private static void Number(Utf8JsonWriter json, string name, double value) => json.WriteNumber(name, Math.Round(value, 9));
}
