using System.Globalization;
using Pattress.Actions.Beams;
using Pattress.Working;
using static System.Math;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>How far a shelf sags between its brackets under what lies on it, for ever: at once, and with creep (EN 1995-1-1 2.2.3, k_def of Table 3.2).</summary>
internal static class ShelfSag
{
    // A sag that the eye sees, as a share of the span (common practice, no source).
    private const double Seen = 1.0 / 200;

    // The fixture's words against the table's; hardwood and softwood are solid timber. Glass does not creep.
    private static string Material(string word) => word is "softwood" or "hardwood" ? "solid_timber" : word;

    // Of a board that may not stand so damp, the dampest class that it may.
    private static double Deformation(string material, int serviceClass)
    {
        for (int c = serviceClass; c >= 1; c--)
            if (Creep.Factor(material, c) is { } k) return k;
        return 0;
    }

    /// <summary>A caution where the longest span, taken as simply supported, will sag so that it is seen; the working either way.</summary>
    internal static IReadOnlyList<Reason> Of(Site site, Stand stand, double width, double EI, double W)
    {
        if (stand.Count < 2) return [];
        var at = stand.Brackets.Select(b => b.X).Order().ToList();
        double L = at.Zip(at.Skip(1), (a, b) => b - a).Max(), q = W / width;
        if (L <= 0) return [];
        double w_inst = site.Step("w_inst", 5 * q * Pow(L, 4) / (384 * EI), "mm", "statics: simply supported between brackets", [In.Of(q), In.Of(L), In.Of(EI)]);
        double creep = Deformation(Material(site.Entries.Word("material")), site.Settings.ServiceClass);
        double k_def = site.Step("k_def", creep, "", "EN 1995-1-1:2004+A1:2008 Table 3.2", [], creep.ToString("R", CultureInfo.InvariantCulture));
        double w_fin = site.Step("w_fin", w_inst * (1 + k_def), "mm", "EN 1995-1-1:2004+A1:2008 2.2.3 (2.3)", [In.Of(w_inst), In.Of(k_def)]);
        return w_fin > Seen * L ? [Site.Caution("shelf_sags", Said.Length(w_fin), Said.Length(L))] : [];
    }
}
