using System.Globalization;
using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>Words and numbers of one job, in its units and its English.</summary>
internal sealed record Say(Settings Settings)
{
    public string Sentence(Reason reason) => Ended(Texts.Sentence(reason, Settings));

    /// <summary>What was assumed, and on what ground.</summary>
    public string Sentence(Assumption assumed)
    {
        string said = Ended(Texts.Sentence(assumed.Code, assumed.Values, Settings));
        return assumed.Source is "" or "assumed" or "invented" ? said : $"{said} ({assumed.Source})";
    }

    public string Name(string id) => Texts.Name(id, Settings);

    /// <summary>So many of a kind: "2 × medium strap toggle".</summary>
    public string Counted(int count, string id) => Texts.Sentence("draw_fixings", [Pattress.Said.Count(count), Pattress.Said.Name(id)], Settings);

    /// <summary>What governs, short enough for a column.</summary>
    public string Governs(string mechanism) => Name((Texts.Has("governs." + mechanism) ? "governs." : "mechanism.") + mechanism);

    public string Length(double mm) => Shows.Length(mm, Settings);

    public string Money(decimal amount) => Shows.Money(amount, Settings.Currency);

    /// <summary>A place on a wall: from the left, and up.</summary>
    public string At(Point at) => Settings.Units == "imperial"
        ? $"{Length(at.X)}, {Length(at.Y)}"
        : string.Create(CultureInfo.InvariantCulture, $"{at.X:0}, {at.Y:0}");

    /// <summary>A bit by its id, kind and diameter: "10 mm masonry bit".</summary>
    public string Bit(string id) => id.Split(' ') is [var kind, var mm] && double.TryParse(mm, NumberStyles.Float, CultureInfo.InvariantCulture, out double d)
        ? Said("bit", Pattress.Said.Length(d), Pattress.Said.Name("bit." + kind))
        : Name(id);

    /// <summary>Bit, diameter and depth of a hole.</summary>
    public string Hole(HoleAnswer hole) => hole.Bit == "none" || hole.DiameterMm <= 0
        ? Said("hole.none")
        : Said("hole", Pattress.Said.Length(hole.DiameterMm), Pattress.Said.Name("bit." + hole.Bit), Pattress.Said.Length(hole.DepthMm));

    private static string Ended(string sentence) => sentence.EndsWith('.') ? sentence : sentence + ".";

    private string Said(string code, params IReadOnlyList<Pattress.Said> values) => Texts.Sentence("cli." + code, values, Settings);

    public static Style Look(Verdict verdict) => new(
        verdict switch { Verdict.Ready => Color.Green, Verdict.CheckFirst => Color.Yellow, _ => Color.Red }, decoration: Decoration.Bold);
}
