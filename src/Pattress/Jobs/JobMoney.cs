namespace Pattress.Jobs;

/// <summary>What the fitter wants of the shopping. All rules are optional; the smallest set to give up is named when they leave nothing.</summary>
public sealed record BuyingWishes
{
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

    /// <summary>Kinds or sizes that are not wanted or that the shop has not.</summary>
    public IReadOnlyList<string> Avoid { get; init; } = [];

    /// <summary>Fixings spoilt in setting, of a hundred (assumed).</summary>
    public int SparePercent { get; init; } = 5;

    /// <summary>What it costs to go and fetch something, in the job's currency (assumed).</summary>
    public decimal TripPrice { get; init; } = 20m;
}

/// <summary>What a quote goes by. Prices in the job's currency; percentages of a hundred.</summary>
public sealed record QuoteTerms
{
    /// <summary>Put on materials.</summary>
    public decimal MarkUpPercent { get; init; } = 15m;

    /// <summary>Put on the sum; 0 for a fitter who charges none.</summary>
    public decimal TaxPercent { get; init; }

    /// <summary>Visits to the house.</summary>
    public int Visits { get; init; } = 1;

    /// <summary>There and back, minutes a visit.</summary>
    public double TravelMinutes { get; init; } = 30;

    /// <summary>Parking a visit.</summary>
    public decimal ParkingPrice { get; init; }

    /// <summary>Floors without a lift, for carrying.</summary>
    public int Floors { get; init; }

    /// <summary>The total is rounded to a multiple of this, half up: 0.01, 0.05 or 1.</summary>
    public decimal RoundTo { get; init; } = 0.01m;
}

/// <summary>A price of the user's own for a size of the catalogue.</summary>
/// <param name="Name">What the shop calls it, or empty.</param>
/// <param name="PackPrice">Price of a pack in the job's currency.</param>
/// <param name="Minutes">To drill and set one, where he knows better; else null.</param>
public sealed record OwnPrice(string Fixing, string Name, int Pack, decimal PackPrice, double? Minutes)
{
    /// <summary>Its measures where they are not the catalogue's.</summary>
    public OwnSize? Size { get; init; }

    /// <summary>What packet or page claims of it.</summary>
    public OwnClaim? Claim { get; init; }
}

/// <summary>How long something took in truth; entered afterwards, and only ever added.</summary>
/// <param name="Step">Step of the work, e.g. <c>drill</c>.</param>
/// <param name="Count">How many of it.</param>
public sealed record Actual(string Id, string Step, double Count, double Minutes);
