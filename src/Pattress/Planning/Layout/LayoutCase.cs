namespace Pattress.Planning.Layout;

/// <summary>
/// A line of brackets to be placed on a grid that is symmetric about its middle: place i lies (i - half) steps from it.
/// </summary>
/// <param name="Worth">Per place, what a bracket there is worth: chance of a support less what is against the place.</param>
/// <param name="Blocked">Per place, no bracket may stand there.</param>
/// <param name="Brackets">How many.</param>
/// <param name="EndMin">Places that the first and last bracket stay away from their end, at least; <paramref name="EndMax"/> at most.</param>
/// <param name="SpanMin">Places between neighbours, at least; <paramref name="SpanMax"/> at most.</param>
/// <param name="StrayCost">What each place off the even spacing costs.</param>
/// <param name="Symmetric">Mirrored about the middle.</param>
public sealed record LayoutCase(
    IReadOnlyList<double> Worth, IReadOnlyList<bool> Blocked, int Brackets, int EndMin, int EndMax, int SpanMin, int SpanMax, double StrayCost, bool Symmetric)
{
    /// <summary>Last place.</summary>
    public int Last => Worth.Count - 1;

    /// <summary>Where bracket k of the even spacing stands, in places, ends as the thing itself places them.</summary>
    public double Even(int k) => Brackets == 1 ? Last / 2.0 : EvenEnd + (k * (Last - (2 * EvenEnd)) / (Brackets - 1));

    /// <summary>End distance of the even spacing, in places.</summary>
    public double EvenEnd { get; init; }

    /// <summary>What bracket k at a place is worth; minus infinity where it may not stand.</summary>
    public double At(int k, int place) => Blocked[place] ? double.NegativeInfinity : Worth[place] - (StrayCost * Math.Abs(place - Even(k)));

    /// <summary>The worth of a whole layout; minus infinity when it breaks a limit.</summary>
    public double Of(IReadOnlyList<int> places)
    {
        if (places[0] < EndMin || places[0] > EndMax || Last - places[^1] < EndMin || Last - places[^1] > EndMax) return double.NegativeInfinity;
        double sum = 0;
        for (int k = 0; k < places.Count; k++)
        {
            if (k > 0 && (places[k] - places[k - 1] < SpanMin || places[k] - places[k - 1] > SpanMax)) return double.NegativeInfinity;
            if (Symmetric && places[k] + places[places.Count - 1 - k] != Last) return double.NegativeInfinity;
            sum += At(k, places[k]);
        }

        return sum;
    }
}
