namespace Pattress.Actions.Beams;

/// <summary>What moves on a beam: one patch, or two that do not overlap, in either order.</summary>
public sealed record MovingLoads(PatchLoad First, PatchLoad? Second = null);

/// <summary>The most and least of one reaction, standing loads included, and where the (first) patch then starts.</summary>
public readonly record struct ReactionRange(Extreme Max, Extreme Min);

/// <summary>Reactions under standing and moving loads.</summary>
/// <param name="Reactions">One range a support, N.</param>
/// <param name="Exact">False where supports lift off, so that effects do not add up and positions had to be stepped through.</param>
public sealed record EnvelopeAnswer(IReadOnlyList<ReactionRange> Reactions, bool Exact)
{
    /// <summary>Bending moments over the stepped positions; null where the envelope is exact and <see cref="MomentEnvelope"/> gives them.</summary>
    public MomentRange? SteppedMoments { get; init; }
}

/// <summary>Envelopes of reactions.</summary>
public static class BeamEnvelope
{
    private const int StepsWhereLifting = 200;
    private const double Slack = 1e-9;

    /// <summary>The envelope; null when the beam can move freely.</summary>
    public static EnvelopeAnswer? Of(Beam beam, BeamLoads standing, MovingLoads moving)
    {
        if (BeamModel.Of(beam, []) is not { } model) return null;
        var lines = InfluenceLine.OfReactions(model);
        var ranges = Ranges(lines, moving, Standing(model, lines, standing));
        return Lifts(beam, ranges) ? Stepped(beam, standing, moving, lines) : new EnvelopeAnswer(ranges, true);
    }

    private static bool Lifts(Beam beam, ReactionRange[] ranges)
    {
        double size = 0;
        foreach (var r in ranges) size = Math.Max(size, Math.Max(Math.Abs(r.Max.Value), Math.Abs(r.Min.Value)));
        for (int i = 0; i < ranges.Length; i++)
            if (beam.Supports[i].OneSided && ranges[i].Min.Value < -Slack * size) return true;
        return false;
    }

    /// <summary>Reactions under the standing loads, from the influence lines; of settlements, from the model.</summary>
    private static double[] Standing(BeamModel model, InfluenceLine[] lines, BeamLoads standing)
    {
        double[] rest = Settled(model);
        for (int i = 0; i < rest.Length; i++)
        {
            foreach (var u in standing.Uniform) rest[i] += u.PerLength * (lines[i].Integral(u.To) - lines[i].Integral(u.From));
            foreach (var p in standing.Points) rest[i] += p.Force * lines[i].At(p.At);
        }
        return rest;
    }

    private static double[] Settled(BeamModel model)
    {
        if (model.Beam.Supports.All(s => s.Settlement == 0)) return new double[model.Beam.Supports.Count];
        var action = model.NoAction();
        for (int s = 0; s < action.Settlement.Length; s++) action.Settlement[s] = model.Beam.Supports[s].Settlement;
        return [.. new BeamAnswer(model, model.Solve(action), action).Reactions];
    }

    private static ReactionRange[] Ranges(InfluenceLine[] lines, MovingLoads moving, double[] rest)
    {
        var ranges = new ReactionRange[lines.Length];
        var sweep = moving.Second is null ? new PatchSweep(lines[0].Cuts, moving.First.Length) : null;
        for (int i = 0; i < lines.Length; i++)
            ranges[i] = Shifted(sweep is null ? Range(lines[i], moving) : Range(sweep.Envelope(lines[i], moving.First.PerLength)), rest[i]);
        return ranges;
    }

    private static ReactionRange Range((Extreme Max, Extreme Min) range) => new(range.Max, range.Min);

    private static ReactionRange Shifted(ReactionRange r, double by) =>
        new(r.Max with { Value = r.Max.Value + by }, r.Min with { Value = r.Min.Value + by });

    internal static ReactionRange Range(InfluenceLine line, MovingLoads moving)
    {
        if (moving.Second is not { } second) return Range(MovingPatch.Envelope(line, moving.First));
        var one = TwoPatches.Envelope(line, moving.First, second);
        var two = TwoPatches.Envelope(line, second, moving.First);
        var most = one.Max.Value >= two.Max.Value ? new Extreme(one.Max.Value, one.Max.First) : new(two.Max.Value, two.Max.Second);
        var least = one.Min.Value <= two.Min.Value ? new Extreme(one.Min.Value, one.Min.First) : new(two.Min.Value, two.Min.Second);
        return new(most, least);
    }

    /// <summary>Every turning point of every influence line, a fine grid besides, and each solved with the supports that stay.</summary>
    private static EnvelopeAnswer? Stepped(Beam beam, BeamLoads standing, MovingLoads moving, IReadOnlyList<InfluenceLine> lines)
    {
        var most = new Extreme[beam.Supports.Count];
        var least = new Extreme[beam.Supports.Count];
        Extreme sag = new(double.NegativeInfinity, 0), hog = new(double.PositiveInfinity, 0);
        Array.Fill(most, new(double.NegativeInfinity, 0));
        Array.Fill(least, new(double.PositiveInfinity, 0));
        foreach (var patches in LiftingPositions.Of(lines, moving, StepsWhereLifting))
        {
            var loads = standing with { Uniform = [.. standing.Uniform, .. patches] };
            if (BeamSolver.Solve(beam, loads) is not { } answer) return null;
            (sag, hog) = (answer.MomentMax.Value > sag.Value ? answer.MomentMax : sag, answer.MomentMin.Value < hog.Value ? answer.MomentMin : hog);
            for (int i = 0; i < most.Length; i++)
            {
                if (answer.Reactions[i] > most[i].Value) most[i] = new(answer.Reactions[i], patches[0].From);
                if (answer.Reactions[i] < least[i].Value) least[i] = new(answer.Reactions[i], patches[0].From);
            }
        }
        return new EnvelopeAnswer([.. most.Select((m, i) => new ReactionRange(m, least[i]))], false) { SteppedMoments = new(sag, hog) };
    }
}
