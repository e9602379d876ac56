namespace Pattress.Brackets;

/// <summary>The units a case is solved in: lengths in plate sizes about the centroid, forces in loads, stiffness in the whole plate's.</summary>
internal readonly record struct ContactScale(double Length, double Force, double Stiffness, double CentreX, double CentreY)
{
    private double Depth => Force / Stiffness;

    internal static ContactScale Of(Plate plate, ReadOnlySpan<FixingPoint> fixings, Bed bed, in Triple raw)
    {
        double length = plate.Size, force = raw.Norm, stiffness = bed.Modulus * length * length;
        foreach (ref readonly var f in fixings)
        {
            stiffness += f.Stiffness;
            force = Math.Max(force, f.PreTension);
        }
        return new ContactScale(length, force, stiffness, plate.CentreX, plate.CentreY);
    }

    /// <summary>The load about the plate's centroid, moments divided by the plate's size, N.</summary>
    internal static Triple AboutCentre(Plate plate, in BracketLoad load) => new(
        load.N, (load.Mx - load.N * plate.CentreX) / plate.Size, (load.My - load.N * plate.CentreY) / plate.Size);

    /// <param name="room">As many numbers as the plate has corners, to be written to.</param>
    internal ContactEnergy Energy(Plate plate, ReadOnlySpan<ScaledFixing> fixings, Bed bed, in Triple raw, Span<double> room) => new()
    {
        X = plate.X,
        Y = plate.Y,
        Lift = plate.Level,
        RingEnds = plate.RingEnds,
        Gaps = room,
        Fixings = fixings,
        Load = new Triple(raw.A / Force, raw.B / Force, raw.C / Force),
        Bed = bed.Modulus * Length * Length / Stiffness,
        CrushDepth = bed.PressureCap / bed.Modulus / Depth,
    };

    internal ScaledFixing Of(in FixingPoint f)
    {
        Span<ScaledFixing> one = stackalloc ScaledFixing[1];
        Scale([f], one);
        return one[0];
    }

    /// <summary>All fixings; four divisions in all.</summary>
    internal void Scale(ReadOnlySpan<FixingPoint> fixings, Span<ScaledFixing> scaled)
    {
        double perLength = 1 / Length, perStiffness = 1 / Stiffness, perDepth = Stiffness / Force, perForce = 1 / Force;
        for (int i = 0; i < fixings.Length; i++)
        {
            ref readonly var f = ref fixings[i];
            scaled[i] = new()
            {
                X = (f.X - CentreX) * perLength,
                Y = (f.Y - CentreY) * perLength,
                K = f.Stiffness * perStiffness,
                Gap = (f.PreTension == 0 ? f.Gap : f.Gap - f.PreTension / f.Stiffness) * perDepth,
                Cap = f.TensionCap * perForce,
            };
        }
    }

    /// <summary>The answer at reference + u, the energy being lifted by the reference.</summary>
    internal ContactAnswer Answer(ref ContactEnergy energy, in Triple reference, in Triple u, ContactStatus status, Span<double> tensions)
    {
        double residual = energy.Residual;
        if (status == ContactStatus.Balanced && !(residual <= ContactSolver.ResidualLimit)) status = ContactStatus.NotSolved;
        for (int i = 0; i < energy.Fixings.Length; i++) tensions[i] = energy.Tension(i, u) * Force;
        double u1 = (reference.B + u.B) * Depth / Length, u2 = (reference.C + u.C) * Depth / Length;
        return new ContactAnswer(
            status, (reference.A + u.A) * Depth - u1 * CentreX - u2 * CentreY, u1, u2,
            energy.Contact * Force, energy.Area * Length * Length,
            energy.Bed * Math.Min(energy.Deepest(u), energy.CrushDepth) * Force / (Length * Length), residual, energy.Evaluations);
    }
}
