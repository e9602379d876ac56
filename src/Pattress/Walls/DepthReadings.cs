using static System.Math;

namespace Pattress.Walls;

/// <summary>What a hole, a hooked wire or a stiff wire may mean in a wall of a given build-up.</summary>
internal sealed class DepthReadings(WallRates rates)
{
    private readonly List<DepthOption> _options = [];

    /// <summary>The options of a reading under a build-up; empty for a reading that measures no depth.</summary>
    public ReadOnlySpan<DepthOption> Options(WallReading reading, BuildUp b, FaceLayer face)
    {
        _options.Clear();
        switch (reading)
        {
            case HookedWire w: Hooked(w, b, face); break;
            case StiffWire w: Stiff(w, b); break;
            case HoleFelt h: Hole(h, b, face); break;
        }
        return System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_options);
    }

    /// <summary>The whole thickness of a partition is two fronts and the void; of anything else, anything.</summary>
    public ReadOnlySpan<DepthOption> Whole(double thickness, BuildUp b)
    {
        _options.Clear();
        double anything = 1.0 / 300;
        if (b.HasBase) _options.Add(DepthOption.Plain(Log(thickness > 90 ? anything : anything / 20)));
        else
        {
            _options.Add(new(Log(0.9), 2, 1, thickness, rates.TapeSdMm));
            _options.Add(DepthOption.Plain(Log(0.1 * anything)));
        }
        return System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_options);
    }

    private double AnyDepth => -Log(rates.MisreadRangeMm);

    private void Hooked(HookedWire w, BuildUp b, FaceLayer face)
    {
        if (b.HasVoid) _options.Add(new(Log(1 - rates.Misread), 1, 0, w.ThicknessMm - face.MeanMm, Wide(rates.HookSdMm, face)));
        // Nothing to hook behind plaster on masonry: what was noted all the same may be anything.
        _options.Add(DepthOption.Plain((b.HasVoid ? Log(rates.Misread) : 0) + AnyDepth));
    }

    private void Stiff(StiffWire w, BuildUp b)
    {
        double measured = b.HasVoid ? (1 - rates.Misread) * (1 - (0.3 * b.SupportShare)) : rates.WireStops;
        if (b.HasVoid) _options.Add(new(Log(measured), 0, 1, w.VoidMm, rates.WireSdMm));
        // Without a void the wire stops at once, or goes as deep as the bit has gone.
        else _options.Add(DepthOption.Plain(Log(2 * measured) + Normal(w.VoidMm, rates.WireSdMm)));
        _options.Add(DepthOption.Plain(Log(1 - measured) + AnyDepth));
    }

    private void Hole(HoleFelt h, BuildUp b, FaceLayer face)
    {
        double on = b.Support == "none" ? 0 : Clamp(h.OnSupport is { } p && b.Support != "dab" ? p : b.SupportShare, 0.001, 0.999);
        if (on > 0) Meets(h, b, face, on, b.SupportMaterial, 0);
        if (b.HasBase) Meets(h, b, face, 1 - on, b.Base, 1);
        else Runs(h, b, face, 1 - on);
        _options.Add(DepthOption.Plain(Log(rates.Misread) + Misread(h)));
    }

    /// <summary>The bit meets something solid: at the back of the front (reach 0) or beyond the void (reach 1).</summary>
    private void Meets(HoleFelt h, BuildUp b, FaceLayer face, double share, string material, double reach)
    {
        double log = Log(share * (1 - rates.Misread)) + Feel(h, b, material);
        double depth = face.MeanMm, straight = b.HasVoid ? rates.GapDepthTold : rates.MasonryDepthTold;
        if (h.SolidAtMm is { } at) _options.Add(new(log + Log(straight), 1, b.HasVoid ? reach : 0, at - depth, Wide(rates.DepthSdMm, face)));
        else if (RanFree(h)) _options.Add(Back(h, face, log + Log(Beyond(h, b, face, reach))));
        else _options.Add(Back(h, face, log + Log(1 - straight)));
    }

    /// <summary>Nothing behind: the bit runs up to the chuck.</summary>
    private void Runs(HoleFelt h, BuildUp b, FaceLayer face, double share)
    {
        double log = Log(share * (1 - rates.Misread)) + Feel(h, b, b.HasVoid ? "void" : "timber");
        double whole = face.MeanMm + b.FrontMm + b.VoidMm, sd = Sqrt((b.VoidSdMm * b.VoidSdMm) + 25);
        if (h.SolidAtMm is { } at) _options.Add(DepthOption.Plain(log + Log(0.02) + Normal(at - whole, sd)));
        else _options.Add(Back(h, face, log));
    }

    /// <summary>Where the bit broke through, if that was noted, measures the front.</summary>
    private DepthOption Back(HoleFelt h, FaceLayer face, double log) =>
        h.BoardBackMm is { } back ? new(log, 1, 0, back - face.MeanMm, Wide(rates.DepthSdMm, face)) : DepthOption.Plain(log);

    private static bool RanFree(HoleFelt h) => h.RanToMm is not null || h.Met is "void";

    /// <summary>Chance that something solid lies deeper than the bit ran.</summary>
    private double Beyond(HoleFelt h, BuildUp b, FaceLayer face, double reach)
    {
        double ran = h.RanToMm ?? 75, at = face.MeanMm + b.FrontMm + (reach * b.VoidMm);
        return Max(1e-4, Trials.Special.Normal.Cdf((at - ran) / Sqrt((b.FrontSdMm * b.FrontSdMm) + (reach * b.VoidSdMm * b.VoidSdMm) + (rates.DepthSdMm * rates.DepthSdMm))));
    }

    /// <summary>What was said of the hole, given what it met; foam and laths on the way may be what was noted.</summary>
    private static double Feel(HoleFelt h, BuildUp b, string really)
    {
        string? passed = b.InsulationMm > 0 ? "foam" : b.Family is "lath" or "lath_ceiling" ? "laths" : null;
        double met = h.Met is null ? 1 : Said("met", h.Met, really, passed, 0.25), swarf = h.Swarf is null ? 1 : Said("swarf", h.Swarf, really, passed, 0.5);
        return Log(met) + Log(swarf);
    }

    private static double Said(string sort, string finding, string really, string? passed, double share) =>
        passed is null ? Likelihoods.Hole(sort, finding, really)
            : ((1 - share) * Likelihoods.Hole(sort, finding, really)) + (share * Likelihoods.Hole(sort, finding, passed));

    private double Misread(HoleFelt h) =>
        (h.SolidAtMm is null ? Log(0.5) : Log(0.5) + AnyDepth) + (h.Met is null ? 0 : -Log(7)) + (h.Swarf is null ? 0 : -Log(8))
        + (h.SolidAtMm is null && h.BoardBackMm is not null ? AnyDepth : 0);

    private static double Wide(double sd, FaceLayer face) => Sqrt((sd * sd) + (face.SdMm * face.SdMm));

    private static double Normal(double miss, double sd) => (-0.5 * miss * miss / (sd * sd)) - Log(sd * Sqrt(2 * PI));
}
