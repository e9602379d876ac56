using System.Globalization;
using Pattress.Jobs;

namespace Pattress.Fixings;

/// <summary>All kinds and sizes of fixing, and the price of bits and setting tools.</summary>
public sealed record FixingCatalogue(IReadOnlyList<FixingKind> Kinds, IReadOnlyList<FixingSize> Sizes, IReadOnlyDictionary<string, decimal> ToolPrices)
{
    private static readonly string[] HoldsByNames = ["friction", "plug", "wings", "thread_wood", "thread_steel", "thread_plug", "sleeve"];

    /// <summary>The catalogue that ships with the program; its prices are invented.</summary>
    public static FixingCatalogue FromEmbedded { get; } = Read(
        CsvTable.FromEmbedded("data/fixings/kinds.csv"), CsvTable.FromEmbedded("data/fixings/sizes.csv"), CsvTable.FromEmbedded("data/fixings/tools.csv"));

    /// <summary>The size with this id, or null.</summary>
    public FixingSize? Find(string id) => Sizes.FirstOrDefault(s => s.Id == id);

    /// <summary>The catalogue with the user's own packs, prices and minutes in place of the invented ones, and his measures and claims.</summary>
    public FixingCatalogue With(IReadOnlyList<OwnPrice> own) => own.Count == 0 ? this : this with { Sizes = [.. Sizes.Select(s => Priced(s, own.FirstOrDefault(p => p.Fixing == s.Id)))] };

    private static FixingSize Priced(FixingSize size, OwnPrice? own) => own is null ? size
        : Measured(size, own.Size) with { Pack = own.Pack, OwnPackPrice = own.PackPrice, Price = own.PackPrice / own.Pack, Minutes = own.Minutes ?? size.Minutes, Claim = own.Claim };

    private static FixingSize Measured(FixingSize size, OwnSize? own) => own is null ? size : size with
    {
        HoleMm = own.HoleMm ?? size.HoleMm, LengthMm = own.LengthMm ?? size.LengthMm, GripMinMm = own.GripMinMm ?? size.GripMinMm,
        GripMaxMm = own.GripMaxMm ?? size.GripMaxMm, VoidMm = own.VoidMm ?? size.VoidMm, EmbedMm = own.EmbedMm ?? size.EmbedMm,
    };

    internal static FixingCatalogue Read(CsvTable kinds, CsvTable sizes, CsvTable tools)
    {
        var byId = kinds.Rows.Select(Kind).ToDictionary(k => k.Id, StringComparer.Ordinal);
        return new(
            [.. byId.Values], [.. sizes.Rows.Select(r => Size(r, byId[r["kind"]]))],
            tools.Rows.ToDictionary(r => r["id"], r => Money(r["price"]), StringComparer.Ordinal));
    }

    private static FixingKind Kind(CsvTable.Row r) => new(
        r["id"], (HoldsBy)Array.IndexOf(HoldsByNames, r["holds_by"]), [.. r["into"].Split(' ').Select(BehindNames.Parse)],
        Yes(r["removable"]), Yes(r["reusable"]), r["setting_tool"], r["bit"], Yes(r["creeps"]), Yes(r["person"]), r["source"]);

    private static FixingSize Size(CsvTable.Row r, FixingKind kind) => new(
        r["id"], kind, r["size"], r.Number("hole_mm"), r.Number("grip_min_mm"), r.Number("grip_max_mm"), r.Number("void_mm"),
        r.Number("bears_long_mm"), r.Number("bears_wide_mm"), r.Number("screw_mm"), r.Number("length_mm"), r.Number("head_mm"),
        r.Number("embed_mm"), r.MaybeNumber("mean_n"), r.Number("minutes"), Money(r["price"]), (int)r.Number("pack"), r["source"]);

    private static bool Yes(string text) => text switch { "yes" => true, "no" => false, _ => throw new FormatException($"'{text}' is neither yes nor no") };

    private static decimal Money(string text) => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);
}
