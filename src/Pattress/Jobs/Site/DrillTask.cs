namespace Pattress.Jobs.Site;

/// <summary>What a hole is drilled for.</summary>
public enum DrillAim
{
    /// <summary>The thin bit: through the face and a little more, stop, feel.</summary>
    Feel,

    /// <summary>To the width that the fixing wants.</summary>
    Widen,
}

/// <summary>One hole, one bit.</summary>
/// <param name="Bracket">Index in the item, from 0.</param>
/// <param name="At">On the wall, mm.</param>
/// <param name="Bit">Kind of bit.</param>
/// <param name="StopMm">Depth of the drill stop from the face, mm; never deeper than the fixing and the wall allow.</param>
/// <param name="FaceMm">Thickness of board, skim, tile or plaster as far as it is known, mm.</param>
/// <param name="Fixing">Kind and size that goes in.</param>
/// <param name="Asks">After it one knows what the drill met, and says so.</param>
public sealed record DrillTask(string Item, int Bracket, string Wall, Point At, DrillAim Aim, string Bit, double DiameterMm, double StopMm, double FaceMm, string Fixing, bool Asks);

/// <summary>Something not to be drilled yet, and why.</summary>
public sealed record HeldBack(string Item, Reason Why);
