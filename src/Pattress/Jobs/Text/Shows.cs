using System.Globalization;

namespace Pattress.Jobs.Text;

/// <summary>Shows values in metric or imperial units, rounded to what they are good for.</summary>
public static class Shows
{
    private const double MmPerInch = 25.4, KgPerPound = 0.45359237, NewtonsPerPoundForce = 4.4482216152605;

    /// <summary>A value of a sentence.</summary>
    public static string Value(Said said, Settings settings) => said.As switch
    {
        Shown.Text => said.Text,
        Shown.Name => Texts.NameInSentence(said.Text, settings),
        Shown.Count or Shown.Year => Number(said.Number, "0"),
        Shown.Length => Length(said.Number, settings),
        Shown.Mass => Mass(said.Number, settings),
        Shown.MassAtMost => MassAtMost(said.Number, settings),
        Shown.Force => Force(said.Number, settings),
        Shown.Percent => Percent(said.Number),
        Shown.Money => Money(decimal.Parse(said.Text, CultureInfo.InvariantCulture), settings.Currency),
        Shown.Minutes => Number(said.Number, said.Number < 10 ? "0.#" : "0") + " min",
        _ => ThreeFigures(said.Number),
    };

    /// <summary>Under 30 mm to half a millimetre, else to one; in inches to a sixteenth.</summary>
    public static string Length(double mm, Settings settings) =>
        IsImperial(settings) ? Inches.Text(mm / MmPerInch)
        : Math.Abs(mm) < 30 ? Number(Math.Round(mm * 2, MidpointRounding.AwayFromZero) / 2, "0.#") + " mm"
        : Number(mm, "#,0") + " mm";

    /// <summary>Under 10 to a tenth, else whole; under 1 kg to 10 g.</summary>
    public static string Mass(double kg, Settings settings)
    {
        double value = IsImperial(settings) ? kg / KgPerPound : kg;
        return Number(value, Math.Abs(value) < 1 ? "0.##" : Math.Abs(value) < 10 ? "0.#" : "#,0") + (IsImperial(settings) ? " lb" : " kg");
    }

    /// <summary>A mass that must not be passed: as <see cref="Mass"/>, but rounded down, so that what is shown promises no more.</summary>
    public static string MassAtMost(double kg, Settings settings)
    {
        double unit = IsImperial(settings) ? KgPerPound : 1, value = kg / unit;
        double step = Math.Abs(value) < 1 ? 0.01 : Math.Abs(value) < 10 ? 0.1 : 1;
        return Mass(Math.Floor(value / step + 1e-6) * step * unit, settings);
    }

    /// <summary>Whole newtons, from 1000 N in kN to 10 N; whole pounds-force, under 10 to a tenth.</summary>
    public static string Force(double newtons, Settings settings)
    {
        double pounds = newtons / NewtonsPerPoundForce;
        if (IsImperial(settings)) return Number(pounds, Math.Abs(pounds) < 10 ? "0.#" : "#,0") + " lbf";
        return Math.Abs(newtons) < 999.5 ? Number(newtons, Math.Abs(newtons) < 10 ? "0.#" : "0") + " N" : Number(newtons / 1000, "0.##") + " kN";
    }

    /// <summary>Whole percent in the middle, one figure at the small end, and never a rounded "100 %" or "0 %" that is not so.</summary>
    public static string Percent(double fraction)
    {
        double percent = fraction * 100;
        return percent switch
        {
            0 => "0 %",
            > 0 and < 1e-4 => "under 0.0001 %",
            > 0 and < 1 => Number(OneFigure(percent), "0.####") + " %",
            > 99.9 and < 100 => "over 99.9 %",
            < 10 or (> 99 and < 100) => Number(percent, "0.#") + " %",
            _ => Number(percent, "#,0") + " %",
        };
    }

    /// <summary>A chance of what may happen: one too small for the machine is small, not nothing.</summary>
    public static string Chance(double fraction) => Percent(fraction == 0 ? double.Epsilon : fraction);

    /// <summary>Two decimals, the sign of the currency before it, or its code.</summary>
    public static string Money(decimal amount, string currency) =>
        (amount < 0 ? "-" : "") + Sign(currency) + Math.Round(Math.Abs(amount), 2, MidpointRounding.AwayFromZero).ToString("#,0.00", CultureInfo.InvariantCulture);

    /// <summary>Three figures, without trailing noughts.</summary>
    public static string ThreeFigures(double number)
    {
        if (number == 0) return "0";
        if (Math.Abs(number) is < 1e-6 or >= 1e9) return Number(number, "0.##E+0");
        int decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 9);
        return Number(Math.Round(number, decimals, MidpointRounding.AwayFromZero), "#,0.#########");
    }

    /// <summary>Five figures, for the numbers of a working: enough to follow it to the three figures of its result.</summary>
    public static string FiveFigures(double number)
    {
        double size = Math.Abs(number);
        return number.ToString(size is >= 1e6 or (> 0 and < 1e-4) ? "0.####E+0" : size >= 1e4 ? "0" : "G5", CultureInfo.InvariantCulture);
    }

    private static bool IsImperial(Settings settings) => settings.Units == "imperial";

    private static string Sign(string currency) => currency switch { "GBP" => "£", "EUR" => "€", "USD" => "$", _ => currency + " " };

    private static double OneFigure(double number)
    {
        double size = Math.Pow(10, Math.Floor(Math.Log10(number)));
        return Math.Round(number / size) * size;
    }

    // No "-0".
    private static string Number(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.Any(c => c is >= '1' and <= '9') ? text : text.TrimStart('-');
    }
}
