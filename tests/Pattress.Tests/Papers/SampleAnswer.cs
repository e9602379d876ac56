using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;

namespace Pattress.Tests.Papers;

/// <summary>A wall and an answer made by hand, with numbers that are easy to find in a drawing; none of them is calculated.</summary>
internal static class SampleAnswer
{
    /// <summary>Says code and values, so that tests see what a drawing asks for.</summary>
    public static readonly Say Plain = r => r.Code + string.Concat(r.Values.Select(v => "|" + (v.As is Shown.Text or Shown.Name ? v.Text : FormattableString.Invariant($"{v.Number:0.##}"))));

    public static readonly Wall Wall = new()
    {
        Id = "w", Name = "Bay", WidthMm = 3000, HeightMm = 2400,
        Readings =
        [
            new() { Id = "r1", Kind = "tap", At = new(600, 1500), Sound = "solid" },
            new() { Id = "r2", Kind = "tap", At = new(300, 1500), Sound = "hollow", Withdrawn = true },
            new() { Id = "r3", Kind = "magnet", From = new(550, 1500), To = new(690, 1500), Hits = [new(612, 1500)] },
        ],
        Openings = [new("o1", "window", new(900, 900, 1200, 1000))],
        Services = [new("s1", "socket", new(200, 300, 146, 86), "this")],
    };

    public static readonly BracketPlate Plate = new([new(-20, -35), new(20, -35), new(20, 35), new(-20, 35)], [new(0, 22), new(0, -22)], 3, 90, true);

    public static readonly Fixture Pole = new() { Id = "pole", Wall = "w", What = "curtain_pole", At = new(1500, 2100), Numbers = new Dictionary<string, double> { ["width_mm"] = 2000, ["drop_mm"] = 1400 } };

    public static WallSection Section(string? fixing, params SectionLayer[] layers) => new("board.studs", layers, fixing, 65, 0);

    public static BracketAnswer Bracket(int index, Point at, string? fixing) => new(
        index, at, fixing, 2, 0.62, "pull_through", 2e-4, "board.studs", 0.88, false, "mechanics", null, 1.10m,
        [new(at with { Y = at.Y + 22 }, 9, 60, "masonry", 0.93, "")],
        [new(at with { Y = at.Y + 22 }, 212, 88), new(at with { Y = at.Y - 22 }, 31, 88)], 1.2, 0.4, "curtain_open", [], [],
        Section(fixing, new("board", 12.5, 0.3), new("void", 75, 9), new("board", 12.5, 0.3)), [], new("why"), 4.2, Plate);

    public static ItemAnswer Item(Verdict verdict) => new(
        "pole", "curtain_pole", "w", "", verdict, new("why"), [], 12, ConsequenceClass.Hurts,
        [Bracket(0, new(625, 2100), "strap_toggle.medium"), Bracket(1, new(2375, 2100), "strap_toggle.medium")], 2e-4, 5e-4, [], []);

    public static readonly WallAnswer WallAnswer = new(
        "w", "Bay", "wall", 3000, 2400, [new("board.studs", 0.88)], 12.5, 0.3, 75, 9,
        [new(600, 5, 38, 0.9), new(1200, 20, 38, 0.6), new(1800, 30, 38, 0.02)], [new(600, 0.8)], [],
        [new("ceiling", "cable", new(0, 2250, 3000, 150), "")], null, []);

    public static ElevationInput Elevation(Verdict verdict) => new(Wall, WallAnswer, [new("A", Pole, Item(verdict))], Datum.Corner);
}
