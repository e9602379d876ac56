using CsCheck;
using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Quantities;
using Pattress.Working;
using static Pattress.Tests.Actions.FixtureSamples;

namespace Pattress.Tests.Actions;

public sealed class FixturePropertyTests
{
    private const int Few = 30;

    private static readonly string[] Ids = [.. FixtureCatalogue.Kinds.Where(k => !k.LicensedTrade).Select(k => k.Id)];

    private static readonly Gen<string> Ours = Gen.Int[0, Ids.Length - 1].Select(i => Ids[i]);

    /// <summary>A fixture whose every number is anywhere in its range, whose every word is any of its list, with brackets at whole millimetres or without.</summary>
    private static readonly Gen<Fixture> Any =
        from what in Ours
        from unit in Gen.Double[0, 1].Array[80]
        from brackets in Gen.Select(Gen.Int[0, 6000], Gen.Int[0, 2500], (x, y) => ((double)x, (double)y)).Array[0, 5]
        from bed in Gen.Bool
        select Filled(FixtureCatalogue.Find(what)!, unit, brackets, bed);

    [Fact]
    public void Any_fixture_gives_finite_loads_on_every_bracket() => Any.Sample(f =>
    {
        foreach (var wall in (Wall[])[FixtureSamples.Wall, Ceiling])
        {
            var actions = f.Load(wall);
            Assert.NotEmpty(actions.Brackets);
            Assert.All(actions.Brackets.SelectMany(b => b.Cases), c => Assert.True(Finite(c.Permanent) && Finite(c.Variable) && Finite(c.Design)));
            Assert.All(actions.Brackets, b => Assert.Equal(b.Cases.Count, b.Cases.Select(c => c.Code).Distinct().Count()));
        }
    }, iter: 60);

    /// <summary>Statics: what hangs 700 mm further along and 300 mm lower pulls no otherwise.</summary>
    [Fact]
    public void The_place_on_the_wall_changes_no_load() => Any.Sample(f =>
    {
        var moved = f with { At = Moved(f.At), Brackets = [.. f.Brackets.Select(Moved)] };
        var (here, there) = (f.Load(), moved.Load());
        // What cancels is as exact as what it is the difference of, and two brackets a millimetre apart pull against one another with a great deal.
        double great = Most(here, w => Parts(w).Max(Math.Abs));
        foreach (var (a, b) in here.Brackets.Zip(there.Brackets))
            foreach (var (x, y) in a.Cases.Zip(b.Cases))
                Assert.All(Parts(x.Design).Zip(Parts(y.Design)), p => Assert.Equal(p.First, p.Second, 1e-6 * (1 + Math.Abs(p.First)) + 1e-10 * great));
    }, iter: 60);

    private static Point Moved(Point p) => new(p.X + 700, p.Y - 300);

    private static double[] Parts(Wrench w) => [w.N, w.Mx, w.My, w.Vx, w.Vy, w.Tz];

    [Fact]
    public void Mass_never_falls_with_width_or_drop() => Gen.Select(Ours, Gen.Double[300, 2500], Gen.Double[1, 2]).Sample((what, size, more) =>
    {
        foreach (string field in (string[])["width_mm", "drop_mm"])
            if (FixtureCatalogue.Find(what)!.Field(field) is { } f && f.Allows(size) && f.Allows(size * more))
                Assert.True(Of(what, (field, size * more)).Load().MassKg >= Of(what, (field, size)).Load().MassKg);
    }, iter: Few);

    [Fact]
    public void Weight_of_a_curtain_rises_with_width_and_drop() => Gen.Select(Gen.Double[400, 4000], Gen.Double[500, 3000]).Sample((width, drop) =>
    {
        double mass = Of("curtain_pole", ("width_mm", width), ("drop_mm", drop)).Load().MassKg;
        Assert.True(Of("curtain_pole", ("width_mm", width + 1), ("drop_mm", drop)).Load().MassKg > mass);
        Assert.True(Of("curtain_pole", ("width_mm", width), ("drop_mm", drop + 1)).Load().MassKg > mass);
    }, iter: Few);

    [Fact]
    public void Longer_arm_never_lowers_the_pull_at_the_top() => Gen.Select(Ours, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((what, a, b) =>
    {
        foreach (string field in (string[])["projection_mm", "extension_mm", "cog_out_mm", "packing_mm"])
            if (FixtureCatalogue.Find(what)!.Field(field) is { } f)
                Assert.True(Top(what, field, In(f, Math.Max(a, b))) >= Top(what, field, In(f, Math.Min(a, b))) - 1e-9);
    }, iter: Few);

    public static TheoryData<string> Kinds => [.. Ids];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Wider_or_longer_is_never_lighter(string what) => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
    {
        foreach (string field in (string[])["width_mm", "drop_mm", "height_mm"])
            if (FixtureCatalogue.Find(what)!.Field(field) is { } f && (field != "height_mm" || f.Required))
                Assert.True(Of(what, (field, In(f, Math.Max(a, b)))).Load().MassKg >= Of(what, (field, In(f, Math.Min(a, b)))).Load().MassKg - 1e-9, field);
    }, iter: Few);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Longer_arm_never_lowers_the_top_fixing_of_any_kind(string what) => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
    {
        foreach (string field in (string[])["projection_mm", "extension_mm", "cog_out_mm", "depth_mm", "packing_mm"])
            if (FixtureCatalogue.Find(what)!.Field(field) is { } f)
                Assert.True(Top(what, field, In(f, Math.Max(a, b))) >= Top(what, field, In(f, Math.Min(a, b))) - 1e-9, field);
    }, iter: Few);

    // Every length, mass and force of every kind typed once in inches, pounds and pounds force, once in mm, kg and N (1 in = 25.4 mm,
    // 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N, all exact by definition).
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Imperial_and_metric_entries_give_the_same_loads(string what) => Gen.Double[0, 1].Array[80].Sample(unit =>
    {
        var metric = Filled(FixtureCatalogue.Find(what)!, unit, [], false);
        var imperial = metric with { Numbers = metric.Numbers.ToDictionary(n => n.Key, n => Retyped(FixtureCatalogue.Find(what)!.Field(n.Key)!, n.Value)) };
        var (a, b) = (metric.Load(), imperial.Load());
        Close(a.MassKg, b.MassKg, 1);
        Assert.Equal(a.Brackets.Count, b.Brackets.Count);
        // What cancels is as exact as what it is the difference of: the greatest force and moment on any bracket.
        double force = Most(a, w => Math.Abs(w.N) + Math.Abs(w.Vx) + Math.Abs(w.Vy)), moment = Most(a, w => Math.Abs(w.Mx) + Math.Abs(w.My) + Math.Abs(w.Tz)) + force;
        foreach (var (x, y) in a.Brackets.SelectMany(p => p.Cases).Zip(b.Brackets.SelectMany(p => p.Cases))) Close(x.Design, y.Design, force, moment);
    }, iter: Few);

    private static double Retyped(FixtureField f, double value)
    {
        (string Unit, double Size, Dimension In)? unit = f.Dimension switch
        {
            FieldDimension.Length => ("in", 25.4, Dimension.LengthMm),
            FieldDimension.Mass => ("lb", 0.45359237, Dimension.MassKg),
            FieldDimension.Force => ("lbf", 4.4482216152605, Dimension.ForceN),
            _ => null,
        };
        if (unit is not { } u) return value;
        string typed = (value / u.Size).ToString("R", System.Globalization.CultureInfo.InvariantCulture);
        if (typed.Contains('E')) return value;
        Assert.True(QuantityText.TryParse(typed + " " + u.Unit, u.In, out double read), typed);
        return read;
    }

    private static double Most(FixtureActions actions, Func<Wrench, double> size) => actions.Brackets.SelectMany(b => b.Cases).Max(c => size(c.Design));

    private static void Close(Wrench a, Wrench b, double force, double moment)
    {
        foreach (var (x, y) in (ReadOnlySpan<(double, double)>)[(a.N, b.N), (a.Vx, b.Vx), (a.Vy, b.Vy)]) Close(x, y, force);
        foreach (var (x, y) in (ReadOnlySpan<(double, double)>)[(a.Mx, b.Mx), (a.My, b.My), (a.Tz, b.Tz)]) Close(x, y, moment);
    }

    private static void Close(double a, double b, double scale) =>
        Assert.True(Math.Abs(a - b) <= 1e-12 * Math.Max(1, Math.Max(scale, Math.Abs(a))), $"{a:R} and {b:R}");

    [Fact]
    public void Inches_and_millimetres_agree() => Gen.Int[16, 90].Sample(inches =>
    {
        Assert.True(QuantityText.TryParse($"{inches} in", Dimension.LengthMm, out double mm));
        var metric = Of("curtain_pole", ("width_mm", inches * 25.4)).Load();
        var imperial = Of("curtain_pole", ("width_mm", mm)).Load();
        Assert.Equal(metric.MassKg, imperial.MassKg, 1e-12 * metric.MassKg);
        Assert.Equal(metric.Case(0, "curtain_moving").Design.My, imperial.Case(0, "curtain_moving").Design.My, 1e-12 * 1e6);
    }, iter: Few);

    [Fact]
    public void Weight_on_the_brackets_is_no_less_than_what_hangs() => Any.Sample(f =>
    {
        var actions = f.Load();
        if (actions.Brackets[0].Cases[0].Code is not ("hangs" or "empty" or "filled" or "curtain_closed" or "closed")) return;
        double down = actions.Brackets.Sum(b => b.Cases[0].Permanent is var w && Recessed(f) ? w.N : -w.Vy);
        double own = actions.Brackets[0].Cases[0].Code == "empty" ? 0 : actions.MassKg * 9.80665;
        Assert.True(down >= own - 1e-6 * (1 + own), $"{f.What}: {down} < {own}");
    }, iter: Few);

    [Fact]
    public void Working_is_the_same_with_and_without_a_trace() => Any.Sample(f =>
    {
        var trace = new Trace();
        Assert.Equal(f.Load().MassKg, FixtureLoads.Of(f, FixtureSamples.Wall, new(), trace).MassKg);
        Assert.NotEmpty(trace.Steps);
    }, iter: Few);

    private static double Top(string what, string field, double value) =>
        Of(what, (field, value)).Load().Brackets.Max(b => b.Cases.Where(c => !c.Code.Contains("arm_")).Max(c => c.Permanent.My + 100 * c.Permanent.N));

    private static bool Recessed(Fixture f) => f.Words.GetValueOrDefault("mount") == "recess";

    private static double In(FixtureField f, double share) => f.Min!.Value + share * (f.Max!.Value - f.Min!.Value);

    private static bool Finite(Wrench w) => double.IsFinite(w.N + w.Mx + w.My + w.Vx + w.Vy + w.Tz);

    private static Fixture Filled(FixtureKind kind, double[] unit, (double X, double Y)[] brackets, bool bed)
    {
        double Number(FixtureField f, int i) => f.Dimension == FieldDimension.Count ? Math.Round(In(f, unit[i])) : In(f, unit[i]);
        var fields = kind.Fields.Select((f, i) => (f, i)).Where(p => p.f.Required || unit[^(p.i + 1)] < 0.6).ToList();
        return new()
        {
            Id = "f", Wall = "w", What = kind.Id, At = new(3000, 1500), OverBed = bed,
            Numbers = fields.Where(p => p.f.Words.Count == 0).ToDictionary(p => p.f.Name, p => Number(p.f, p.i)),
            Words = fields.Where(p => p.f.Words.Count > 0).ToDictionary(p => p.f.Name, p => p.f.Words[Math.Min(p.f.Words.Count - 1, (int)(unit[p.i] * p.f.Words.Count))]),
            Brackets = brackets.Length < kind.MinBrackets || brackets.Length > kind.MaxBrackets ? [] : [.. brackets.Select(b => new Point(b.X, b.Y))],
        };
    }
}
