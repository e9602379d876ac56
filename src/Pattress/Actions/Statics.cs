namespace Pattress.Actions;

/// <summary>A force in a vertical plane: <paramref name="Across"/> along the wall or off it, <paramref name="Down"/>, N.</summary>
public readonly record struct PlaneForce(double Across, double Down)
{
    /// <summary>Resultant, N.</summary>
    public double Size => Math.Sqrt(Across * Across + Down * Down);
}

/// <summary>What a reaching arm brings to its wall plate.</summary>
/// <param name="Down">Shear down, N.</param>
/// <param name="Moment">Moment that pulls the top of the plate off the wall, Nmm.</param>
/// <param name="Twist">Moment that pulls one side off when the arm is swung to the side, Nmm (positive: pulls at the side away from the swing).</param>
/// <param name="Off">Pull off the wall, N.</param>
public readonly record struct ArmActions(double Down, double Moment, double Twist, double Off);

/// <summary>Statics of things that hang; N, mm, degrees. All exact.</summary>
public static class Statics
{
    /// <summary>
    /// Factor on a weight let fall or snatched over <paramref name="drop"/> mm where it deflects what it meets by
    /// <paramref name="deflection"/> mm under its rest weight: 1 + sqrt(1 + 2h/d). 2 with no drop. Energy balance, elastic.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A negative drop, or no deflection to drop onto.</exception>
    public static double DynamicFactor(double drop, double deflection)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(drop);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deflection);
        return 1 + Math.Sqrt(1 + 2 * drop / deflection);
    }

    /// <summary>Pull of a picture wire on each of its ends when it hangs on one hook at an angle to the horizontal: W / (2 sin a).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not above 0 and at most 90.</exception>
    public static double WireTension(double weight, double angleDegrees)
    {
        if (!(angleDegrees is > 0 and <= 90)) throw new ArgumentOutOfRangeException(nameof(angleDegrees));
        return weight / (2 * Math.Sin(angleDegrees * Math.PI / 180));
    }

    /// <summary>
    /// Force on each of two hooks at one height when the weight hangs in the middle of a wire between them: half the weight
    /// down, and inwards half the weight times half the distance over the sag.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Distance or sag not above 0.</exception>
    public static PlaneForce WireHook(double weight, double apart, double sag)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(apart);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sag);
        return new PlaneForce(weight / 2 * (apart / 2) / sag, weight / 2);
    }

    /// <summary>
    /// Load on the left and the right of two hooks, the centre of gravity between or beside them; a negative one lifts.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The hooks are in one place.</exception>
    public static (double Left, double Right) TwoHooks(double weight, double leftAt, double rightAt, double gravityAt)
    {
        double apart = rightAt - leftAt;
        ArgumentOutOfRangeException.ThrowIfZero(apart, nameof(rightAt));
        return (weight * (rightAt - gravityAt) / apart, weight * (gravityAt - leftAt) / apart);
    }

    /// <summary>
    /// Pull off the wall at the upper of two lines of support of a thing whose weight lies off the wall, such as a radiator on
    /// hooks or a cabinet on a rail: weight times reach over the height between the lines; the lower line presses as much.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above 0.</exception>
    public static double PullAtTop(double weight, double reach, double height)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        return weight * reach / height;
    }

    /// <summary>
    /// An arm that reaches off the wall, swung to the side by an angle from straight out, 0 to 180 degrees. The arm's own weight acts at its
    /// middle. The moment is largest with the arm straight out; swung flat the moment along the wall twists the plate.
    /// </summary>
    public static ArmActions Arm(double weight, double reach, double armWeight, double swingDegrees, double pull = 0)
    {
        double angle = swingDegrees * Math.PI / 180, moment = weight * reach + armWeight * reach / 2;
        return new ArmActions(weight + armWeight, moment * Math.Cos(angle), moment * Math.Sin(angle), pull);
    }

    /// <summary>Second moment of area of a board lying flat, mm⁴.</summary>
    public static double BoardInertia(double width, double thickness) => width * thickness * thickness * thickness / 12;

    /// <summary>Sag of a shelf on two supports under a uniform load in N/mm: 5 q L⁴ / 384 EI, mm.</summary>
    public static double ShelfSag(double perLength, double length, double modulus, double width, double thickness) =>
        5 * perLength * Math.Pow(length, 4) / (384 * modulus * BoardInertia(width, thickness));
}
