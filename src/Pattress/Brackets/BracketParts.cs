namespace Pattress.Brackets;

/// <summary>A corner of a plate's outline, mm in the bracket's own axes (docs/conventions/axes.md).</summary>
public readonly record struct Corner(double X, double Y);

/// <summary>
/// One fixing through the plate. It pulls when the plate leaves the wall there by more than <paramref name="Gap"/>.
/// </summary>
/// <param name="X">mm, to the right.</param>
/// <param name="Y">mm, up.</param>
/// <param name="Stiffness">Axial stiffness, N/mm, above 0.</param>
/// <param name="Gap">Slack before it pulls, mm, 0 or more.</param>
/// <param name="PreTension">Tension set when the plate lies on the unloaded wall, N, 0 or more.</param>
/// <param name="TensionCap">Tension at which it yields and redistributes, N; infinite when it does not yield.</param>
public readonly record struct FixingPoint(
    double X, double Y, double Stiffness, double Gap = 0, double PreTension = 0, double TensionCap = double.PositiveInfinity);

/// <summary>The wall behind the plate: pressure = modulus x how far the plate is pressed in.</summary>
/// <param name="Modulus">N/mm³, above 0.</param>
/// <param name="PressureCap">Pressure at which the board crushes, MPa; infinite when it does not.</param>
public readonly record struct Bed(double Modulus, double PressureCap = double.PositiveInfinity);

/// <summary>
/// The load on a bracket, conjugate to the gap field u0 + u1 x + u2 y: <paramref name="N"/> pulls the plate off the wall,
/// <paramref name="Mx"/> goes with x (it is the pull times its x), <paramref name="My"/> with y; all about the origin.
/// </summary>
/// <param name="N">Pull off the wall, N.</param>
/// <param name="Mx">Sum of pull times x, Nmm.</param>
/// <param name="My">Sum of pull times y, Nmm.</param>
/// <param name="Vx">Shear to the right, N.</param>
/// <param name="Vy">Shear up, N.</param>
/// <param name="Tz">Twist about the axis out of the wall, anticlockwise seen from the room, Nmm.</param>
public readonly record struct BracketLoad(double N, double Mx, double My, double Vx = 0, double Vy = 0, double Tz = 0);

/// <summary>How a contact solve ended.</summary>
public enum ContactStatus
{
    /// <summary>Equilibrium found, residual at most 1e-9.</summary>
    Balanced,

    /// <summary>No equilibrium exists: the plate can leave the wall without stretching any fixing.</summary>
    Mechanism,

    /// <summary>No equilibrium exists: fixings and board have yielded and the load is above what they can carry.</summary>
    Overloaded,

    /// <summary>The residual stayed above 1e-9; the numbers are no answer.</summary>
    NotSolved,
}

/// <summary>Equilibrium of a plate on its wall. Tensions are in the span that was passed in.</summary>
/// <param name="Status">Only <see cref="ContactStatus.Balanced"/> carries an answer.</param>
/// <param name="U0">Gap at the origin, mm.</param>
/// <param name="U1">Tilt, mm of gap per mm of x.</param>
/// <param name="U2">Tilt, mm of gap per mm of y.</param>
/// <param name="Contact">Sum of the pressure on the wall, N.</param>
/// <param name="Area">Area in contact, mm².</param>
/// <param name="PressureMax">Highest pressure, MPa.</param>
/// <param name="Residual">Out-of-balance force and moment over the load or the sum of tensions, whichever is larger; lengths in plate sizes.</param>
/// <param name="Evaluations">Times the energy's gradient was evaluated.</param>
public readonly record struct ContactAnswer(
    ContactStatus Status, double U0, double U1, double U2,
    double Contact, double Area, double PressureMax, double Residual, int Evaluations);
