namespace Pattress.Jobs;

/// <summary>One test of a fixing by the user, to failure or stopped before it. Tests are only ever added or withdrawn.</summary>
public sealed record OwnTest
{
    /// <summary>UUID v7 or any short text unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>Kind and size id of the catalogue, e.g. <c>strap_toggle.medium</c>.</summary>
    public required string Fixing { get; init; }

    /// <summary><c>tension</c> or <c>shear</c>, on one fixing.</summary>
    public required string Load { get; init; }

    /// <summary>Load at failure, or at which the test was stopped (N).</summary>
    public required double LoadN { get; init; }

    /// <summary><c>failed</c> or <c>stopped</c>.</summary>
    public string Outcome { get; init; } = "failed";

    /// <summary>Thickness of the board tested (mm); null when nobody said, and then it raises nothing.</summary>
    public double? BoardMm { get; init; }

    /// <summary>The board's state: <c>dry</c>, <c>damp</c>, <c>fresh_plaster</c> or <c>unknown</c>.</summary>
    public string Moisture { get; init; } = "unknown";

    /// <summary>
    /// What it was set into: <c>board</c>, <c>brick</c>, <c>dense_block</c>, <c>concrete</c>, <c>aerated_block</c>, <c>dab</c> or <c>unknown</c>;
    /// a board thickness says <c>board</c> by itself.
    /// </summary>
    public string Into { get; init; } = "unknown";

    /// <summary>The wall of this job that it was made on; empty when it was none of them. Only tests on the wall itself raise a plug in masonry.</summary>
    public string Wall { get; init; } = "";

    /// <summary>Title of the other job that it came from; empty for this job's own.</summary>
    public string From { get; init; } = "";

    /// <summary><c>bench</c> or <c>site</c>.</summary>
    public string Where { get; init; } = "bench";

    /// <summary>How it failed: <c>board</c>, <c>slid</c>, <c>fixing</c>, <c>screw</c> or <c>unknown</c>.</summary>
    public string Mode { get; init; } = "unknown";

    /// <summary>Date, or date and time in UTC, ISO 8601; empty when nobody said.</summary>
    public string On { get; init; } = "";

    public string Note { get; init; } = "";

    /// <summary>True when the user took it back; it is kept and not used.</summary>
    public bool Withdrawn { get; init; }
}

/// <summary>One pull on a fixing that stays, to prove it. Records are only ever added or withdrawn.</summary>
public sealed record ProofRecord
{
    /// <summary>UUID v7 or any short text unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>The fixture it belongs to; one that is no longer in the job is kept and not used.</summary>
    public required string Fixture { get; init; }

    /// <summary>Index of the bracket, from 0.</summary>
    public int Bracket { get; init; }

    /// <summary>Index of the hole in the bracket, from 0; null for a pull on the bracket as a whole.</summary>
    public int? Hole { get; init; }

    /// <summary>What was set there: kind and size id of the catalogue; empty when nobody said.</summary>
    public string Fixing { get; init; } = "";

    /// <summary>The pull (N); where it came away, the load at that moment.</summary>
    public required double LoadN { get; init; }

    /// <summary>How long it was held, s; null when nobody timed it.</summary>
    public double? HeldS { get; init; }

    /// <summary>Movement against the pencil mark (mm); null when nobody looked.</summary>
    public double? MovedMm { get; init; }

    /// <summary><c>held</c>, <c>moved</c> (more than allowed) or <c>came_away</c>.</summary>
    public required string Result { get; init; }

    /// <summary><c>luggage_scale</c>, <c>spring_balance</c>, <c>bucket_on_arm</c>, <c>tester</c> or <c>other</c>.</summary>
    public string Way { get; init; } = "other";

    /// <summary>Date, or date and time in UTC, ISO 8601; empty when nobody said.</summary>
    public string On { get; init; } = "";

    public string Note { get; init; } = "";

    /// <summary>True when the user took it back; it is kept and not used.</summary>
    public bool Withdrawn { get; init; }
}
