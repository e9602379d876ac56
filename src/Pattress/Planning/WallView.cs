using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Supports;

namespace Pattress.Planning;

/// <summary>All that is believed of one wall, ready to be asked for any bracket on it.</summary>
public abstract class WallView(Wall wall)
{
    public Wall Wall { get; } = wall;

    /// <summary>Cable strips and caution bands.</summary>
    public IReadOnlyList<CableStrip> Strips { get; } = CableStrips.Of(wall);

    /// <summary>How taps and magnets mislead, as the job's holes have taught it.</summary>
    public abstract LineRates Rates { get; }

    /// <summary>What the plan says of the wall.</summary>
    public abstract WallAnswer Answer { get; }

    /// <summary>Ideas of what stands behind a bracket's holes; they exclude each other.</summary>
    public abstract IReadOnlyList<Idea> Ideas(BracketActions bracket);

    /// <summary>Places where a support is likeliest near <paramref name="x"/>, with its probability; best first.</summary>
    public abstract IReadOnlyList<(double X, double Probability)> BetterPlaces(double x);

    /// <summary>The check that best settles whether what was picked for this bracket holds; never one that does not help.</summary>
    public abstract CheckToDo Settle(BracketPlan bracket, IReadOnlyList<string> items);
}
