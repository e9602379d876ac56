namespace Pattress.Actions.Fixtures;

/// <summary>What people do to a fixture: each way they can pull is a case of its own.</summary>
internal static class People
{
    /// <summary>The ways in which somebody pulls; the codes are <c>pulled_</c> and the way.</summary>
    public static readonly IReadOnlyList<string> DownAndOut = ["down", "out", "left", "right"];

    public static readonly IReadOnlyList<string> AllWays = ["down", "out", "left", "right", "up", "down_and_out"];

    /// <summary>A pull of that many N.</summary>
    public static Force Way(this Surface surface, string way, double newton) => way switch
    {
        "down" => surface.Down(newton),
        "up" => surface.Up(newton),
        "out" => surface.Outward(newton),
        "left" => surface.Along(-newton),
        "right" => surface.Along(newton),
        "down_and_out" => Both(surface.Down(newton / Math.Sqrt(2)), surface.Outward(newton / Math.Sqrt(2))),
        _ => throw new ArgumentException($"no way '{way}'", nameof(way)),
    };

    /// <summary>Cases of a sudden pull at one point, on top of what hangs there for good and what may lie on it.</summary>
    public static IEnumerable<Draft> Pulls(this Site site, ICarrier carrier, IReadOnlyList<Wrench> permanent, Push at,
        IReadOnlyList<string> ways, IReadOnlyList<Wrench>? contents = null)
    {
        double person = site.PersonN();
        if (person <= 0) return [];
        double cov = site.Entries.Table("cov.person");
        return [.. ways.Select(way => new Draft("pulled_" + way, LoadDuration.Instantaneous, permanent,
            Sum(carrier.Carry(at with { Force = site.Surface.Way(way, person) }), contents), cov))];
    }

    /// <summary>One named thing that somebody does.</summary>
    public static Draft Does(this Site site, string code, IReadOnlyList<Wrench> permanent, IReadOnlyList<Wrench> variable) =>
        new(code, LoadDuration.Instantaneous, permanent, variable, site.Entries.Table("cov.person"));

    private static IReadOnlyList<Wrench> Sum(IReadOnlyList<Wrench> pull, IReadOnlyList<Wrench>? contents) =>
        contents == null ? pull : pull.Plus(contents);

    private static Force Both(Force a, Force b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
}
