using System.Globalization;

namespace Pattress;

/// <summary>What kind of number a sentence holds, so that the text layer can show it in metric or imperial.</summary>
public enum Shown { Text, Name, Count, Length, Mass, MassAtMost, Force, Percent, Number, Money, Minutes, Year }

/// <summary>
/// One value of a sentence. Lengths in mm, masses in kg, forces in N, percentages as fractions of one.
/// <c>Name</c> is a fixed id (a kind of fixing, a build-up) whose words the text layer holds; <c>Text</c> is the user's own.
/// </summary>
public readonly record struct Said(Shown As, double Number, string Text)
{
    public static Said Length(double mm) => new(Shown.Length, mm, "");

    public static Said Mass(double kg) => new(Shown.Mass, kg, "");

    /// <summary>A mass that must not be passed: shown rounded down.</summary>
    public static Said MassAtMost(double kg) => new(Shown.MassAtMost, kg, "");

    public static Said Force(double n) => new(Shown.Force, n, "");

    public static Said Percent(double fraction) => new(Shown.Percent, fraction, "");

    public static Said Count(int n) => new(Shown.Count, n, "");

    public static Said Plain(double number) => new(Shown.Number, number, "");

    public static Said Minutes(double minutes) => new(Shown.Minutes, minutes, "");

    public static Said Year(int year) => new(Shown.Year, year, "");

    public static Said Money(decimal amount) => new(Shown.Money, (double)amount, amount.ToString(CultureInfo.InvariantCulture));

    public static Said Name(string id) => new(Shown.Name, 0, id);

    public static Said Words(string text) => new(Shown.Text, 0, text);
}

/// <summary>A reason as code and values; one text layer turns it into a sentence.</summary>
public sealed record Reason(string Code, params IReadOnlyList<Said> Values);
