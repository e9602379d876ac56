namespace Pattress.Actions.Beams;

/// <summary>A bracket, hook or wall that carries a rail or a shelf.</summary>
/// <param name="At">mm from the left end.</param>
/// <param name="Stiffness">N/mm; infinite when rigid.</param>
/// <param name="Clamped">Holds the slope too (an end built in).</param>
/// <param name="OneSided">A cup: it can push up but not hold down.</param>
/// <param name="Settlement">How far it stands below the line, mm (packing makes it negative).</param>
public readonly record struct BeamSupport(
    double At, double Stiffness = double.PositiveInfinity, bool Clamped = false, bool OneSided = false, double Settlement = 0)
{
    /// <summary>True when it does not give.</summary>
    public bool Rigid => double.IsPositiveInfinity(Stiffness);
}

/// <summary>A stretch of the beam with one bending stiffness, Nmm²; stretches follow one another from end to end.</summary>
public readonly record struct BeamStretch(double Length, double Ei);

/// <summary>A standing load, downwards positive: uniform in N/mm over a stretch.</summary>
public readonly record struct UniformLoad(double From, double To, double PerLength);

/// <summary>A standing load, downwards positive: at one place, N.</summary>
public readonly record struct PointLoad(double At, double Force);

/// <summary>A uniform load of fixed length that can stand anywhere on the beam (a stack of curtain).</summary>
public readonly record struct PatchLoad(double Length, double PerLength);

/// <summary>A beam: stretches, hinges where its pieces are joined, and supports in order of place.</summary>
public sealed record Beam(IReadOnlyList<BeamStretch> Stretches, IReadOnlyList<BeamSupport> Supports, IReadOnlyList<double> Hinges)
{
    /// <summary>A beam of one section without joints.</summary>
    public Beam(double length, double ei, params IReadOnlyList<BeamSupport> supports)
        : this([new(length, ei)], supports, [])
    {
    }

    /// <summary>Length over all, mm.</summary>
    public double Length => Stretches.Sum(s => s.Length);
}

/// <summary>All standing loads.</summary>
public sealed record BeamLoads(IReadOnlyList<UniformLoad> Uniform, IReadOnlyList<PointLoad> Points)
{
    public static readonly BeamLoads None = new([], []);

    internal IEnumerable<double> Places => Uniform.SelectMany(u => new[] { u.From, u.To }).Concat(Points.Select(p => p.At));
}

/// <summary>A value and where it occurs along the beam, mm.</summary>
public readonly record struct Extreme(double Value, double At);
