namespace Pattress.Planning.Buying;

/// <summary>A buying problem as plain data: classes of identical brackets, kinds, tools and the rules of the house.</summary>
public sealed record BuyingCase(IReadOnlyList<BuyClass> Classes, IReadOnlyList<BuyKind> Kinds, IReadOnlyList<BuyTool> Tools, BuyingRules Rules);

/// <summary>Brackets that want the same.</summary>
/// <param name="Items">Ids of the things they carry.</param>
/// <param name="Options">Sizes that could hold them.</param>
/// <param name="States">What may be found behind them, as far as it makes a difference; probabilities sum to one or less.</param>
public sealed record BuyClass(IReadOnlyList<string> Items, int Brackets, IReadOnlyList<BuyOption> Options, IReadOnlyList<BuyState> States);

/// <summary>One size as a way to fix the brackets of a class.</summary>
/// <param name="Kind">Index of the kind.</param>
/// <param name="Count">Fixings a bracket.</param>
/// <param name="Tools">Indices of the bits and setting tools it wants.</param>
/// <param name="Main">May be the plan's own choice; else it only stands in where the wall is otherwise.</param>
public sealed record BuyOption(int Kind, int Count, IReadOnlyList<int> Tools, bool Main);

/// <summary>One thing that may be found behind the brackets of a class.</summary>
/// <param name="Holds">Indices of the options that hold then.</param>
public sealed record BuyState(double Probability, IReadOnlyList<int> Holds);

/// <summary>A size in the shop and in the van.</summary>
/// <param name="Minutes">To drill and set one.</param>
public sealed record BuyKind(string Id, int Pack, decimal PackPrice, int InVan, double Minutes)
{
    /// <summary>Price of one out of a pack.</summary>
    public decimal PiecePrice => PackPrice / Pack;
}

/// <summary>A bit or setting tool.</summary>
public sealed record BuyTool(string Id, string Sort, decimal Price, bool InVan);

/// <summary>What the buyer goes by; prices in the job's currency.</summary>
public sealed record BuyingRules
{
    /// <summary>What a minute of the fitter costs.</summary>
    public decimal MinutePrice { get; init; } = 0.50m;

    /// <summary>What it costs to go and fetch something (assumed: half an hour and the way).</summary>
    public decimal TripPrice { get; init; } = 20m;

    /// <summary>Fixings spoilt in setting, of a hundred (assumed).</summary>
    public int SparePercent { get; init; } = 5;

    /// <summary>What a fixing from the van counts, as a share of its price: it must be replaced one day (assumed).</summary>
    public decimal VanShare { get; init; } = 0.5m;

    /// <summary>Minutes to stop a hole that is not used (assumed).</summary>
    public double FillMinutes { get; init; } = 5;

    /// <summary>Most that may be spent in the shop, or null.</summary>
    public decimal? Budget { get; init; }

    /// <summary>Most sizes of fixing to carry, or null.</summary>
    public int? MostKinds { get; init; }

    /// <summary>Most bits to carry, or null.</summary>
    public int? MostBits { get; init; }

    /// <summary>No shop is open: only what is in the van.</summary>
    public bool VanOnly { get; init; }

    /// <summary>Whatever the wall turns out to be, what holds there must be in hand.</summary>
    public bool NoSecondTrip { get; init; }

    /// <summary>Kinds or sizes that are not wanted.</summary>
    public IReadOnlyList<string> Avoid { get; init; } = [];

    /// <summary>All brackets of a class with the same kind, as fitters prefer; false for the cheaper mix.</summary>
    public bool OneKindPerClass { get; init; } = true;
}
