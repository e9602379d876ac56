namespace Pattress.Jobs;

/// <summary>
/// What was done on site: holes drilled, cautions read, signatures (pulls are <see cref="Job.Proofs"/>). Each entry carries a UUID v7 made where it was
/// added; entries are only ever added or withdrawn, so that two devices can be put together.
/// </summary>
public sealed record WorkDone
{
    public IReadOnlyList<DrilledHole> Holes { get; init; } = [];

    public IReadOnlyList<CautionsRead> Read { get; init; } = [];

    public IReadOnlyList<Signature> Signed { get; init; } = [];

    public bool IsNothing => Holes.Count + Read.Count + Signed.Count == 0;
}

/// <summary>A hole that was drilled to its full width; what the thin bit met before it is a reading of the wall.</summary>
/// <param name="Bracket">Index of the bracket in its fixture, from 0.</param>
/// <param name="DepthMm">From the face.</param>
/// <param name="On">UTC, ISO 8601.</param>
public sealed record DrilledHole(string Id, string Fixture, int Bracket, Point At, double DiameterMm, double DepthMm, string On, bool Withdrawn);

/// <summary>Cautions that were ticked before the first hole in a wall.</summary>
/// <param name="Codes">Codes of the cautions.</param>
public sealed record CautionsRead(string Id, string Wall, IReadOnlyList<string> Codes, string On);

/// <summary>A handover sheet signed on the glass.</summary>
/// <param name="Name">Who signed, in their own words; may be empty.</param>
/// <param name="Sheet">Fingerprint of the sheet that was signed, so that a later change shows.</param>
/// <param name="Strokes">Lines of the finger, each point within 0 to 1000 across and 0 to 1000 down.</param>
public sealed record Signature(string Id, string Name, string Sheet, IReadOnlyList<IReadOnlyList<Point>> Strokes, string On, bool Withdrawn);
