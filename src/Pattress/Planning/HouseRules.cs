using Pattress.Actions;
using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>Rules of the house that come before any strength: what may never be used for a thing, whatever it carries.</summary>
public static class HouseRules
{
    /// <summary>Greatest mean tension that a kind with nothing behind the board is used for, as a share of a trifle: mass in kg (assumed).</summary>
    public const double TrifleKg = 0.5;

    /// <summary>Why this size may not be used for this, or null.</summary>
    public static Reason? Refusal(FixingSize size, Spot spot, Ask ask)
    {
        bool board = OnBoard(spot.Behind);
        if (ask.Removable && !size.Kind.Removable) return new Reason("not_removable");
        if (ask.Class == ConsequenceClass.HoldsPerson && board) return new Reason("board_never_carries_person");
        if (ask.Class == ConsequenceClass.HoldsPerson && !size.Kind.Person) return new Reason("too_weak_for_person");
        if (ask.Ceiling && board) return new Reason("overhead_needs_support");
        if (ask.Class == ConsequenceClass.Overhead && board) return new Reason("above_people_needs_support");
        if (spot.Behind == Behind.LathVoid && size.Kind.Bit == "spear") return new Reason("lath_needs_core_drill");
        if (size.Kind.HoldsBy == HoldsBy.Friction && ask.Class != ConsequenceClass.Nuisance) return new Reason("only_for_trifles");
        return null;
    }

    /// <summary>True where only board, laths or foam hold the fixing.</summary>
    public static bool OnBoard(Behind behind) =>
        behind is Behind.BoardVoid or Behind.BoardFoam or Behind.BoardDabGap or Behind.LathVoid or Behind.PanelVoid;
}
