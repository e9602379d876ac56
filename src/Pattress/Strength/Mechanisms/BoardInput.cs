namespace Pattress.Strength.Mechanisms;

/// <summary>How the board bends at the fixing: across its length (weak) unless somebody knows better.</summary>
public enum BendingDirection { Unknown, Across, Along }

/// <summary>What holds the board itself.</summary>
public enum BoardSupport { Screws, Dabs, Foam }

/// <summary>A fixing that bears on the back of a board, and where it stands. Lengths in mm.</summary>
/// <param name="Thickness">Of all boards together.</param>
/// <param name="Layers">1, or 2 for doubled board, not glued: they punch together and bend each for itself.</param>
/// <param name="Bearing">Width behind the board: a disc's diameter, or (length + width) · 2/π of a bar. 0: nothing bears behind.</param>
/// <param name="Shank">Diameter in the board: bolt or plug.</param>
/// <param name="Span">Between the studs; 0 where something solid backs the board, which then does not bend.</param>
/// <param name="FromSupport">From the nearest stud's middle; half the span where unknown.</param>
/// <param name="Edge">To the nearest edge, joint or old hole of the board.</param>
/// <param name="Set">Whose least bending strength: EN 520, or ASTM C1396.</param>
/// <param name="Group">Fixings in a row close together, and <paramref name="Spacing"/> between them.</param>
public sealed record BoardInput(
    double Thickness, double Bearing, double Shank, double Span, Duration Duration, Dampness Damp = Dampness.Dry, int Layers = 1,
    double? FromSupport = null, double Edge = 1000, int Group = 1, double Spacing = 1000, BendingDirection Direction = BendingDirection.Unknown,
    BoardSupport Support = BoardSupport.Screws, RuleSet Set = RuleSet.Eurocode)
{
    /// <summary>The width behind the board of a bar: the disc with the same perimeter.</summary>
    public static double BarAsDisc(double length, double width) => (length + width) * 2 / Math.PI;
}
