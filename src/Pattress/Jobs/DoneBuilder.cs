using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Turns the checked entry of what was done into its record.</summary>
internal static class DoneBuilder
{
    public static WorkDone Build(Entry done) => new()
    {
        Holes = JobBuilder.All(done, "holes", HoleOf),
        Read = JobBuilder.All(done, "cautions_read", r => new CautionsRead(r.TextOf("id"), r.TextOf("wall"), JobBuilder.All(r, "codes", c => c.Text), r.TextOf("on"))),
        Signed = JobBuilder.All(done, "signed", SignatureOf),
    };

    private static DrilledHole HoleOf(Entry e) => new(
        e.TextOf("id"), e.TextOf("fixture"), (int)e.NumberOf("bracket"), e.MaybePoint("at_mm")!.Value,
        e.NumberOf("diameter_mm"), e.NumberOf("depth_mm"), e.TextOf("on"), JobBuilder.IsYes(e, "withdrawn"));

    private static Signature SignatureOf(Entry e) => new(
        e.TextOf("id"), e.TextOr("name", ""), e.TextOf("sheet"),
        JobBuilder.All<IReadOnlyList<Point>>(e, "strokes", s => [.. s.Items.Select(p => p.Point)]), e.TextOf("on"), JobBuilder.IsYes(e, "withdrawn"));
}
