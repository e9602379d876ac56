using System.Globalization;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>Things as they are before anyone has measured: what must be entered gets a start to change.</summary>
internal static class NewThings
{
    /// <summary>A new job in another house: the van and own prices come along, but for what the demo house invents; own tests count in every job anyhow.</summary>
    public static Job Begun(Desk desk) => WithVan(new() { Settings = desk.Job.Settings with { YearBuilt = null, House = "unknown" } }, desk);

    /// <summary>The job with the van and own prices of the one on the desk.</summary>
    public static Job WithVan(Job job, Desk desk) =>
        desk.KeptAs == "demo" ? job : job with { Stock = desk.Job.Stock, Prices = desk.Job.Prices };

    public static Fixture Make(FixtureKind kind, Wall wall, Job job)
    {
        var numbers = new SortedDictionary<string, double>(StringComparer.Ordinal);
        foreach (var field in kind.Fields.Where(f => f.Required && f.Dimension != FieldDimension.Words)) numbers[field.Name] = Start(field, wall);
        return new()
        {
            Id = FreeId(kind.Id, job.IsTaken), Wall = wall.Id, What = kind.Id, Numbers = numbers,
            At = new(Math.Round(wall.WidthMm / 2), Math.Round(wall.HeightMm * (wall.Kind == "ceiling" ? 0.5 : 0.75))),
        };
    }

    /// <summary>A window or door in the middle of a new wall, of a usual size, to be moved; none for any other word.</summary>
    public static IReadOnlyList<Opening> Openings(string kind, double widthMm, double heightMm, Job job)
    {
        if (kind is not ("window" or "door")) return [];
        double width = Math.Min(kind == "door" ? 800 : 1200, widthMm), height = Math.Min(kind == "door" ? 2000 : 1200, heightMm);
        double sill = kind == "door" ? 0 : Math.Round(Math.Min(900, (heightMm - height) / 2));
        return [new(FreeId(kind, job.IsTaken), kind, new(Math.Round((widthMm - width) / 2), sill, width, height))];
    }

    /// <summary>The name itself, or with the first number that makes it free.</summary>
    public static string FreeId(string name, Func<string, bool> taken)
    {
        if (!taken(name)) return name;
        int i = 2;
        while (taken(name + "_" + i.ToString(CultureInfo.InvariantCulture))) i++;
        return name + "_" + i.ToString(CultureInfo.InvariantCulture);
    }

    private static double Start(FixtureField field, Wall wall)
    {
        double usual = field.Name switch
        {
            "width_mm" => Math.Min(1200, Math.Round(wall.WidthMm / 2)),
            "drop_mm" => 1400,
            "height_mm" => 600,
            "depth_mm" => 250,
            "cog_out_mm" => 100,
            _ => field.Dimension == FieldDimension.Mass ? 10 : 1,
        };
        return Math.Clamp(usual, field.Min ?? 0, field.Max ?? double.MaxValue);
    }
}
