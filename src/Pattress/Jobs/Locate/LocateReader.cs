using System.Globalization;
using Pattress.Jobs.Doors;
using Pattress.Supports;

namespace Pattress.Jobs.Locate;

/// <summary>Reads a scan strictly: what lies off the wall, outside its sweep or stands there twice is refused with its path.</summary>
internal static class LocateReader
{
    /// <summary>The scan, or every problem of the document.</summary>
    public static Outcome<LineScan> Read(string json)
    {
        var read = Door.Read(json, LocateShapes.Scan);
        if (read.Value is not { } entry) return Outcome<LineScan>.Refused(read.Problems);
        var problems = new ProblemList();
        var scan = Build(entry, problems);
        return problems.IsEmpty ? Outcome<LineScan>.Of(scan) : Outcome<LineScan>.Refused(problems.Problems);
    }

    private static LineScan Build(Entry e, ProblemList problems)
    {
        double length = e.NumberOf("length_mm");
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var given in e.ItemsOf("readings").Where(r => r.MaybeText("id") is not null))
            if (!ids.Add(given.TextOf("id"))) problems.Add("duplicate_id", given.Path.Field("id"), given.TextOf("id"), "an id that no other reading has");
        List<LineReading> readings = [.. e.ItemsOf("readings").Select(r => Reading(r, length, ids, problems))];
        List<Zone> zones = [.. e.ItemsOf("zones").Select(z => new Zone(Side(z, "from_mm", length, problems), Ends(z, length, problems)))];
        return new(length, readings, zones)
        {
            Openings = [.. e.ItemsOf("openings").Select(o => new LineOpening(Side(o, "from_mm", length, problems), Ends(o, length, problems), o.TextOr("on_line", "no") == "yes"))],
            Rates = e["rates"] is { } rates ? Rates(rates) : null,
            WallHeightMm = e.NumberOr("wall_height_mm", 0),
            IsCeiling = e.TextOr("kind", "wall") == "ceiling",
            IsUp = e.TextOr("direction", "across") == "up" && e.TextOr("kind", "wall") == "wall",
        };
    }

    private static LineRates Rates(Entry e)
    {
        var r = LineRates.Default;
        return r with
        {
            TapSolidOn = e.NumberOr("tap_solid_on", r.TapSolidOn),
            TapSolidOff = e.NumberOr("tap_solid_off", r.TapSolidOff),
            MagnetFinds = e.NumberOr("magnet_finds", r.MagnetFinds),
            MagnetFalsePerMm = e.NumberOr("magnet_false_per_m", r.MagnetFalsePerMm * 1000) / 1000,
            HoleMeetsOn = e.NumberOr("hole_meets_on", r.HoleMeetsOn),
            HoleMeetsOff = e.NumberOr("hole_meets_off", r.HoleMeetsOff),
        };
    }

    private static LineReading Reading(Entry r, double length, HashSet<string> ids, ProblemList problems)
    {
        string kind = r.TextOf("kind");
        double height = r.NumberOr("height_mm", 0), at = Side(r, kind == "magnet" ? "from_mm" : "at_mm", length, problems);
        string id = r.MaybeText("id") ?? Derived(kind, at, ids);
        return kind switch
        {
            "tap" => new Tap(id, at, Sound(r.TextOf("sound")), height),
            "hole" => new ThinHole(id, at, Met(r.TextOf("met")), height),
            "detector" => new DetectorSignal(id, at, r.TextOf("found") == "yes", height),
            "board_joint" => new BoardJoint(id, at, height),
            "magnet_along" => new SweepAlong(id, at, r.NumberOf("length_mm"), (int)r.NumberOf("hits"), height),
            _ => Sweep(id, r, at, Side(r, "to_mm", length, problems), height, problems),
        };
    }

    private static MagnetSweep Sweep(string id, Entry r, double from, double to, double height, ProblemList problems)
    {
        foreach (var hit in r.ItemsOf("hits_mm").Where(h => h.Number < Math.Min(from, to) || h.Number > Math.Max(from, to)))
            problems.Add("hit_outside_sweep", hit.Path, Text(hit.Number), $"from {Text(Math.Min(from, to))} to {Text(Math.Max(from, to))}, where the magnet was drawn");
        return new(id, from, to, [.. r.ItemsOf("hits_mm").Select(h => h.Number)], height);
    }

    private static double Side(Entry e, string field, double length, ProblemList problems)
    {
        double at = e.NumberOf(field);
        if (at < 0 || at > length) problems.Add("off_wall", e.Path.Field(field), Text(at), $"from 0 to {Text(length)}, the length of the wall");
        return at;
    }

    private static double Ends(Entry e, double length, ProblemList problems)
    {
        double from = e.NumberOf("from_mm"), to = Side(e, "to_mm", length, problems);
        if (to < from) problems.Add("backwards", e.Path.Field("to_mm"), Text(to), $"{Text(from)} or more, where it begins");
        return to;
    }

    /// <summary>An id from kind and position; further readings of one place are numbered.</summary>
    private static string Derived(string kind, double at, HashSet<string> ids)
    {
        string plain = kind + "-" + Text(at), id = plain;
        for (int n = 2; !ids.Add(id); n++) id = plain + "-" + n.ToString(CultureInfo.InvariantCulture);
        return id;
    }

    private static string Text(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    private static TapSound Sound(string word) => word switch { "hollow" => TapSound.Hollow, "solid" => TapSound.Solid, "high" => TapSound.High, _ => TapSound.Dull };

    private static HoleMet Met(string word) => word switch
    {
        "support" => HoleMet.Support, "void" => HoleMet.Void, "dab" => HoleMet.Dab, "masonry" => HoleMet.Masonry, "metal" => HoleMet.Metal, "foam" or "laths" => HoleMet.Passed, _ => HoleMet.Other,
    };
}
