using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>The wall itself: outline, openings, services, old holes.</summary>
internal static class WallMarks
{
    public static IReadOnlyList<Mark> Outline(Wall wall, Sheet sheet) =>
        [new RectMark("edge", new Rect(0, 0, wall.WidthMm, wall.HeightMm)), .. wall.OldHoles.SelectMany(h => OldHole(h, sheet))];

    public static IReadOnlyList<Mark> Openings(Wall wall, Sheet sheet) => [.. wall.Openings.SelectMany(o => Opening(o, sheet))];

    public static IReadOnlyList<Mark> Services(Wall wall, Sheet sheet) => [.. wall.Services.SelectMany(s => Service(s, sheet))];

    private static IEnumerable<Mark> Opening(Opening opening, Sheet sheet)
    {
        var a = opening.Area;
        double frame = Math.Min(50, Math.Min(a.Width, a.Height) / 6);
        yield return new RectMark("opening", a) { Fact = new(sheet.Name("opening." + opening.Kind), Extent(a, sheet), "") };
        if (opening.Kind == "recess") yield break;
        double foot = opening.Kind == "door" ? 0 : frame;
        yield return new RectMark("frame", new Rect(a.X + frame, a.Y + foot, a.Width - 2 * frame, a.Height - frame - foot));
        if (opening.Kind == "window") yield return new LineMark("frame", new(a.X + a.Width / 2, a.Y + foot), new(a.X + a.Width / 2, a.Top - frame));
    }

    private static IEnumerable<Mark> Service(Service service, Sheet sheet)
    {
        var a = AtLeast(service.Area, sheet.Px(9));
        string face = service.Face == "other" ? " far" : "";
        yield return new RectMark("service " + (service.IsElectrical ? "electric" : "plumbed") + face, a)
        {
            Fact = new(sheet.Name("service." + service.Kind), Extent(service.Area, sheet), service.Face == "other" ? sheet.Words("draw_other_face") : ""),
        };
        foreach (var line in Inside(service, a)) yield return new LineMark("service-line", line.From, line.To);
    }

    private static IEnumerable<(Point From, Point To)> Inside(Service service, Rect a)
    {
        Point P(double x, double y) => new(a.X + x * a.Width, a.Y + y * a.Height);
        return service.Kind switch
        {
            "socket" => [(P(.3, .35), P(.3, .65)), (P(.7, .35), P(.7, .65))],
            "switch" => [(P(.3, .2), P(.7, .8))],
            "light" => [(P(.1, .1), P(.9, .9)), (P(.1, .9), P(.9, .1))],
            "spur" => [(P(.2, .5), P(.8, .5))],
            "radiator" => [(P(.2, .1), P(.2, .9)), (P(.4, .1), P(.4, .9)), (P(.6, .1), P(.6, .9)), (P(.8, .1), P(.8, .9))],
            "tap" => [(P(.5, .2), P(.5, .8)), (P(.2, .8), P(.8, .8))],
            _ => [(P(.5, 0), P(.5, 1))],
        };
    }

    private static IEnumerable<Mark> OldHole(OldHole hole, Sheet sheet)
    {
        double r = sheet.Px(3);
        yield return new LineMark("old-hole", new(hole.At.X - r, hole.At.Y - r), new(hole.At.X + r, hole.At.Y + r)) { Fact = new(sheet.Words("draw_old_hole"), sheet.Place(hole.At), sheet.Length(hole.DiameterMm)) };
        yield return new LineMark("old-hole", new(hole.At.X - r, hole.At.Y + r), new(hole.At.X + r, hole.At.Y - r));
    }

    private static Rect AtLeast(Rect a, double size)
    {
        double w = Math.Max(a.Width, size), h = Math.Max(a.Height, size);
        return new Rect(a.X + a.Width / 2 - w / 2, a.Y + a.Height / 2 - h / 2, w, h);
    }

    internal static string Extent(Rect a, Sheet sheet) =>
        sheet.Words("draw_extent", Said.Length(a.X), Said.Length(a.Right), Said.Length(a.Y), Said.Length(a.Top));
}
