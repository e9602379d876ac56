using Pattress.Actions;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>Gathers what chance of failure and proof load of a bracket are worked out from.</summary>
internal static class Odds
{
    public static BracketOdds? Of(BracketActions bracket, Hold? hold)
    {
        if (hold is not { NotCovered: null } || bracket.Cases.FirstOrDefault(c => c.Code == hold.LoadCase) is not { } load) return null;
        var characteristic = load.Permanent + load.Variable;
        double design = Forces.Size(load.Design), share = design > 0 ? Math.Min(1, Forces.Size(characteristic) / design) : 0;
        return new(hold.MeanResistanceN, hold.ResistanceCov, hold.MeanActionN, hold.ActionCov, share,
            Math.Max(0, -characteristic.Vy), Math.Max(0, characteristic.N), Math.Max(0, characteristic.My));
    }
}
