namespace Pattress.Actions.Fixtures;

/// <summary>Every bracket takes the whole push, straight in front of its middle.</summary>
internal sealed class EachAlone(IReadOnlyList<Jobs.Point> brackets) : ICarrier
{
    public IReadOnlyList<Wrench> Carry(Push push) => [.. brackets.Select(_ => (push with { X = 0, Y = 0 }).About(0, 0))];
}
