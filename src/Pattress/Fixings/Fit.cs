namespace Pattress.Fixings;

/// <summary>
/// Does a size fit at a spot? Tested on the distribution of thickness and void: a size fits when the chance that every
/// measure suits it is at least <see cref="Sure"/>. The answer is null when it fits, else the reason.
/// </summary>
public static class Fit
{
    /// <summary>Chance that a measure must suit a size before it is called a fit (assumed).</summary>
    public const double Sure = 0.90;

    /// <summary>A gap behind the board wider than this lets an unsleeved screw draw the board back, mm (assumed).</summary>
    public const double DrawnBackGapMm = 3;

    /// <summary>Deepest masonry that a sleeved through-fixing reaches, mm behind the face (common practice, no source).</summary>
    public const double SleeveReachMm = 45;

    /// <summary>Why the size does not fit, or null.</summary>
    /// <param name="plateMm">Thickness of the plate that the screw passes first, mm.</param>
    public static Reason? Refusal(FixingSize size, Spot spot, double plateMm = 0) =>
        WrongBase(size, spot) ?? size.Kind.HoldsBy switch
        {
            HoldsBy.Friction => Grip(size, spot) ?? Void(size, spot),
            HoldsBy.Plug => spot.Behind is Behind.Masonry or Behind.Aerated ? null : Knot(size, spot) ?? Void(size, spot),
            HoldsBy.Wings => spot.Behind is Behind.SteelStud ? Thickness(size, spot) : spot.Behind is Behind.Masonry ? InMasonry(size, spot, plateMm) : Wings(size, spot),
            HoldsBy.ThreadInWood => Reach(size, spot, plateMm),
            HoldsBy.ThreadInSteel => Thickness(size, spot),
            HoldsBy.ThreadInPlug => Plug(size, spot, plateMm),
            HoldsBy.Sleeve => Sleeve(size, spot, plateMm),
            _ => null,
        };

    private static Reason? WrongBase(FixingSize size, Spot spot) =>
        size.Kind.Into.Contains(spot.Behind) ? null : new Reason("not_for_base", Said.Name(size.Kind.Id), Said.Name(spot.Behind.Key()));

    private static Reason? Grip(FixingSize size, Spot spot) => Thickness(size, spot)
        ?? (spot.Face.AtLeast(size.GripMinMm) < Sure ? new Reason("face_too_thin", Said.Length(spot.Face.Mean), Said.Length(size.GripMinMm)) : null);

    private static Reason? Thickness(FixingSize size, Spot spot) =>
        spot.Face.AtMost(size.GripMaxMm) < Sure ? new Reason("face_too_thick", Said.Length(spot.Face.Mean), Said.Length(size.GripMaxMm)) : null;

    private static Reason? Void(FixingSize size, Spot spot) =>
        spot.Void.AtLeast(size.VoidMm) < Sure
            ? new Reason("void_too_shallow", Said.Length(size.VoidMm), Said.Length(spot.Void.Mean), Said.Percent(spot.Void.AtLeast(size.VoidMm)))
            : null;

    private static Reason? Knot(FixingSize size, Spot spot) =>
        spot.Face.AtMost(size.GripMaxMm) < Sure
            ? new Reason("too_short_to_knot", Said.Length(size.LengthMm), Said.Length(spot.Face.Mean))
            : spot.Face.AtLeast(size.GripMinMm) < Sure ? new Reason("face_too_thin", Said.Length(spot.Face.Mean), Said.Length(size.GripMinMm)) : null;

    private static Reason? Wings(FixingSize size, Spot spot) => Grip(size, spot) ?? Void(size, spot) ?? Foul(size, spot);

    private static Reason? Foul(FixingSize size, Spot spot) =>
        spot.SupportClear.AtLeast(Math.Max(size.BearsWideMm, size.HoleMm) / 2) < Sure
            ? new Reason("wings_foul_support", Said.Length(spot.SupportClear.Mean), Said.Length(size.BearsWideMm / 2))
            : null;

    private static Reason? Reach(FixingSize size, Spot spot, double plateMm)
    {
        double need = plateMm + size.EmbedMm + spot.Face.Mean + 2 * spot.Face.Sd;
        if (size.LengthMm < need) return new Reason("screw_too_short", Said.Length(size.LengthMm), Said.Length(need));
        return spot.SupportDepth.AtLeast(size.EmbedMm) < Sure ? new Reason("support_too_thin", Said.Length(spot.SupportDepth.Mean), Said.Length(size.EmbedMm)) : null;
    }

    private static Reason? Plug(FixingSize size, Spot spot, double plateMm)
    {
        if (spot.Behind is Behind.Dab) return spot.Void.AtLeast(size.EmbedMm / 2) < Sure ? new Reason("dab_too_thin", Said.Length(spot.Void.Mean)) : null;
        double gap = spot.MasonryAt.Mean - spot.Face.Mean;
        if (gap > DrawnBackGapMm) return new Reason("board_drawn_back", Said.Length(gap));
        return InMasonry(size, spot, plateMm);
    }

    /// <summary>At least half of the depth that the size wants is in the masonry.</summary>
    private static Reason? InMasonry(FixingSize size, Spot spot, double plateMm)
    {
        double need = plateMm + size.EmbedMm + spot.MasonryAt.Mean;
        return size.LengthMm < need - 1e-6 - size.EmbedMm / 2 ? new Reason("screw_too_short", Said.Length(size.LengthMm), Said.Length(need)) : null;
    }

    private static Reason? Sleeve(FixingSize size, Spot spot, double plateMm)
    {
        if (spot.MasonryAt.IsNone) return new Reason("no_masonry_behind");
        if (spot.MasonryAt.AtMost(SleeveReachMm) < Sure)
            return new Reason("masonry_beyond_sleeve", Said.Length(spot.MasonryAt.Mean), Said.Length(SleeveReachMm));
        double need = plateMm + size.EmbedMm / 2 + spot.MasonryAt.Mean;
        return size.LengthMm < need ? new Reason("screw_too_short", Said.Length(size.LengthMm), Said.Length(need)) : null;
    }
}
