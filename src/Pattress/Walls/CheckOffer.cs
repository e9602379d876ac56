namespace Pattress.Walls;

/// <summary>A check that could be done, with what it may find under each hypothesis.</summary>
/// <param name="Id">Kind of check, e.g. <c>magnet</c>.</param>
/// <param name="Price">Price in the unit of the losses (minutes), damage included.</param>
/// <param name="Likelihood">P(outcome | hypothesis) at [outcome][hypothesis]; outcomes sum to 1 for each hypothesis.</param>
public sealed record CheckOffer(string Id, double Price, IReadOnlyList<string> Outcomes, double[][] Likelihood)
{
    /// <summary>Price once the last check of the list has been done: a wire in a hole that is there by then. Null: the same.</summary>
    public double? PriceAfterLast { get; init; }
}

/// <summary>The decision at hand: loss of each action under each hypothesis.</summary>
/// <param name="Loss">At [action][hypothesis], in the unit of the prices (minutes).</param>
public sealed record CheckDecision(IReadOnlyList<string> Actions, double[][] Loss);

/// <summary>The best thing to do next.</summary>
/// <param name="Check">Index of the check, or -1: nothing is worth its price.</param>
/// <param name="Action">Index of the best action without any check.</param>
/// <param name="LossNow">Expected loss of acting at once; <paramref name="LossBest"/> of the best policy, prices included.</param>
/// <param name="Before">Chance that the best action is the right one now, <paramref name="After"/> expected after the check.</param>
/// <param name="AtEnd">The same at the end of the best policy.</param>
/// <param name="States">Records of outcomes that were looked at.</param>
public sealed record CheckChoice(int Check, int Action, double LossNow, double LossBest, double Before, double After, double AtEnd, int States)
{
    /// <summary>What the best policy saves over acting at once, minutes.</summary>
    public double Gain => LossNow - LossBest;
}
