namespace Pattress.Actions.Fixtures;

/// <summary>One case of load before it is factored: the wrench on each bracket, in the order of the brackets.</summary>
internal sealed record Draft(
    string Code, LoadDuration Duration, IReadOnlyList<Wrench> Permanent, IReadOnlyList<Wrench> Variable, double Cov);

/// <summary>A fixture as its kind works it out: mass, brackets, how far in front of the wall its load acts, and the cases.</summary>
internal sealed record Hung(double MassKg, Stand Stand, double ArmMm, IReadOnlyList<Draft> Cases)
{
    public IReadOnlyList<Reason> Cautions { get; init; } = [];

    /// <summary>Class where it depends on what was entered.</summary>
    public ConsequenceClass? Class { get; init; }
}

/// <summary>Where the brackets are, mm on the wall, and whether the fitter chose it.</summary>
internal sealed record Stand(IReadOnlyList<Jobs.Point> Brackets, bool Placed)
{
    public int Count => Brackets.Count;
}

/// <summary>Whatever turns a push on a fixture into loads on its brackets.</summary>
internal interface ICarrier
{
    /// <summary>The wrench on each bracket's plate.</summary>
    IReadOnlyList<Wrench> Carry(Push push);
}

/// <summary>Sums of wrenches, bracket by bracket.</summary>
internal static class Wrenches
{
    public static IReadOnlyList<Wrench> None(int n) => new Wrench[n];

    public static IReadOnlyList<Wrench> Plus(this IReadOnlyList<Wrench> a, IReadOnlyList<Wrench> b) =>
        [.. a.Select((w, i) => w + b[i])];
}
