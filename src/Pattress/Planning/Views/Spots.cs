using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>A build-up as believed at one place: how likely, how thick, how hollow.</summary>
public readonly record struct Believed(BuildUp BuildUp, double Probability, Fixings.Spread Front, Fixings.Spread Void);

/// <summary>Turns a believed build-up into spots for fixings, and a spot's layers for the drawing.</summary>
public static class Spots
{
    /// <summary>Depth of a joist that a screw can use, mm (assumed); a stud is as deep as its void.</summary>
    private const double JoistMm = 95, LintelMm = 90, NogginMm = 45, BehindMm = 60;

    /// <summary>Between supports, or straight in where there are none; nearest to the face first.</summary>
    public static IReadOnlyList<Spot> Between(Believed b, Fixings.Spread clear)
    {
        var up = b.BuildUp;
        if (up.Base is "timber") return [Timber(b, up.HasVoid ? b.Void : up.Family == "noggin" ? new(NogginMm, 3) : new(LintelMm, 10))];
        if (up.Base is "hollow_steel" or "steel") return [Spot(b, Behind.SteelLintel, "steel", Total(b), new(0, 0), clear)];
        if (!up.HasVoid && !up.HasBase) return [Spot(b, Behind.PanelVoid, "panel", Fixings.Spread.None, new(0, 0), clear)];
        if (!up.HasVoid && up.InsulationMm <= 0) return [Masonry(b)];
        var first = Spot(b, Hollow(up), Board(up), Fixings.Spread.None, new(0, 0), clear);
        return up.HasBase ? [first, Gap(b)] : [first];
    }

    /// <summary>Into the support that holds the board.</summary>
    public static Spot Support(Believed b) => b.BuildUp.Support switch
    {
        "steel_stud" => Spot(b, Behind.SteelStud, "steel", Fixings.Spread.None, new(0.55, 0), Fixings.Spread.None, "steel"),
        "joist" => Timber(b, new(JoistMm, 10)),
        _ => Timber(b, b.Void),
    };

    /// <summary>At a dab: the dab first, the masonry behind it deeper.</summary>
    public static IReadOnlyList<Spot> Dab(Believed b) => [Spot(b, Behind.Dab, "dab", Total(b), new(0, 0), Fixings.Spread.None, "dab"), Gap(b)];

    private static Spot Timber(Believed b, Fixings.Spread depth) => Spot(b, Behind.Timber, "timber", Fixings.Spread.None, depth, Fixings.Spread.None, "timber");

    private static Spot Masonry(Believed b) =>
        Spot(b, b.BuildUp.Base == "aerated_block" ? Behind.Aerated : Behind.Masonry, Base(b.BuildUp), b.Front, new(0, 0), Fixings.Spread.None);

    private static Spot Gap(Believed b) => Spot(b, Behind.MasonryBehindGap, Base(b.BuildUp), Total(b), new(0, 0), Fixings.Spread.None);

    private static Behind Hollow(BuildUp up) => up.Family switch
    {
        "lath" or "lath_ceiling" => Behind.LathVoid,
        "laminate" or "laminate_battens" => Behind.BoardFoam,
        "dabs" => Behind.BoardDabGap,
        "panel" or "boxing" => up.Id.StartsWith("boxing.board", StringComparison.Ordinal) ? Behind.BoardVoid : Behind.PanelVoid,
        _ => Behind.BoardVoid,
    };

    private static string Board(BuildUp up) => Hollow(up) switch { Behind.LathVoid => "lath_plaster", Behind.PanelVoid => "panel", _ => "gypsum_board" };

    /// <summary>Rubble and clinker are taken as the weakest that is tabled until they are tested.</summary>
    private static string Base(BuildUp up) => up.Base is "rubble" or "clinker_block" ? "aerated_block" : up.Base is "hollow_steel" ? "steel" : up.Base;

    private static Fixings.Spread Total(Believed b) =>
        new(b.Front.Mean + b.Void.Mean, Math.Sqrt(b.Front.Sd * b.Front.Sd + b.Void.Sd * b.Void.Sd));

    /// <summary>Foam counts as room to open in, so a laminate's face is its board and its void the foam and the gap.</summary>
    private static Spot Spot(
        Believed b, Behind behind, string baseMaterial, Fixings.Spread masonryAt, Fixings.Spread depth, Fixings.Spread clear, string? support = null)
    {
        double foam = behind == Behind.BoardFoam ? b.BuildUp.InsulationMm : 0;
        var face = b.Front with { Mean = b.Front.Mean - foam };
        var room = b.Void with { Mean = b.Void.Mean + foam };
        return new(b.BuildUp.Id, behind, face, room, masonryAt, depth, clear, baseMaterial, Layers(b, support));
    }

    private static IReadOnlyList<SectionLayer> Layers(Believed b, string? support)
    {
        var up = b.BuildUp;
        double front = up.FrontMm > 0 ? b.Front.Mean / up.FrontMm : 1;
        var layers = up.Layers.Where(l => l.Material is not "void" && l.Material != up.Base)
            .Select(l => new SectionLayer(l.Material, l.ThicknessMm * front, b.Front.Sd)).ToList();
        if (up.HasVoid || support is not null) layers.Add(new(support ?? "void", support is null or "dab" ? b.Void.Mean : Math.Max(b.Void.Mean, 40), b.Void.Sd));
        if (up.HasBase) layers.Add(new(up.Base, BehindMm, 0));
        return layers;
    }
}
