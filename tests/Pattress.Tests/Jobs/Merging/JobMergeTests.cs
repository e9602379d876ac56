using CsCheck;
using Pattress.Jobs;
using Pattress.Jobs.Merging;

namespace Pattress.Tests.Jobs.Merging;

/// <summary>Laws of a union: it does not matter which device meets which, or how often.</summary>
public class JobMergeTests
{
    private const string Noon = "2026-03-01T12:00:00Z";

    // Few ids, so that devices often hold the same record, withdrawn here and not there, or even with another content.
    private static readonly Gen<Reading> AnyReading = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 3], Gen.Bool, (id, sort, withdrawn) =>
        new Reading { Id = $"r{id}", Kind = "tap", At = new Point(100, 1000), Sound = sort == 0 ? "solid" : "hollow", Withdrawn = withdrawn });

    private static readonly Gen<DrilledHole> AnyHole = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 3], Gen.Bool, (id, sort, withdrawn) =>
        new DrilledHole($"d{id}", "f0", 0, new Point(10, 20), sort == 0 ? 6 : 14, 12, Noon, withdrawn));

    private static readonly Gen<ProofRecord> AnyPull = Gen.Select(Gen.Int[0, 6], Gen.Bool, Gen.Bool, (id, moved, withdrawn) =>
        new ProofRecord { Id = $"p{id}", Fixture = "f0", LoadN = 200, HeldS = 30, Result = moved ? "moved" : "held", On = Noon, Withdrawn = withdrawn });

    private static readonly Gen<Job> Device = Gen.Select(AnyReading.Array[0, 6], AnyHole.Array[0, 6], AnyPull.Array[0, 6], (readings, holes, pulls) => new Job
    {
        Id = "j", Walls = [new Wall { Id = "w", WidthMm = 4000, HeightMm = 2400, Readings = [.. readings.DistinctBy(r => r.Id)] }],
        Done = new() { Holes = [.. holes.DistinctBy(h => h.Id)] }, Proofs = [.. pulls.DistinctBy(p => p.Id)],
    });

    [Fact]
    public void It_does_not_matter_who_meets_whom() => Gen.Select(Device, Device).Sample((a, b) =>
        Assert.Equal(JobWriter.Write(a.WithRecordsOf(b)), JobWriter.Write(b.WithRecordsOf(a))), iter: 2000);

    [Fact]
    public void It_does_not_matter_in_what_order_they_meet() => Gen.Select(Device, Device, Device).Sample((a, b, c) =>
        Assert.Equal(JobWriter.Write(a.WithRecordsOf(b).WithRecordsOf(c)), JobWriter.Write(a.WithRecordsOf(b.WithRecordsOf(c)))), iter: 2000);

    [Fact]
    public void It_does_not_matter_how_often_they_meet() => Gen.Select(Device, Device).Sample((a, b) =>
    {
        var met = a.WithRecordsOf(b);
        Assert.Equal(JobWriter.Write(met), JobWriter.Write(met.WithRecordsOf(b)));
        Assert.Equal(JobWriter.Write(met), JobWriter.Write(met.WithRecordsOf(met)));
    }, iter: 2000);

    [Fact]
    public void Nothing_recorded_is_lost_and_what_was_withdrawn_stays_so() => Gen.Select(Device, Device).Sample((a, b) =>
    {
        var met = a.WithRecordsOf(b);
        var ids = a.Walls[0].Readings.Concat(b.Walls[0].Readings).Select(r => r.Id).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal(ids, met.Walls[0].Readings.Select(r => r.Id));
        foreach (var hole in a.Done.Holes.Concat(b.Done.Holes).Where(h => h.Withdrawn)) Assert.True(met.Done.Holes.Single(h => h.Id == hole.Id).Withdrawn);
    }, iter: 500);

    [Fact]
    public void What_met_passes_the_door_again() => Gen.Select(JobGen.Job, JobGen.Job).Sample((a, b) =>
        Assert.Equal([], JobReader.Read(JobWriter.Write(a.WithRecordsOf(b))).Problems), iter: 200);

    [Fact]
    public void Records_alone_are_no_difference() => Gen.Select(Device, Device).Sample((a, b) => Assert.Empty(JobDifferences.Between(a, b)), iter: 200);

    [Fact]
    public void A_job_is_not_different_from_itself() => JobGen.Job.Sample(job => Assert.Empty(JobDifferences.Between(job, job)), iter: 200);

    [Fact]
    public void Differences_are_named_where_they_are()
    {
        var ours = new Job { Title = "a", Walls = [new Wall { Id = "w", WidthMm = 4000, HeightMm = 2400 }] };
        var theirs = ours with
        {
            Title = "b", Settings = ours.Settings with { Units = "imperial" },
            Walls = [ours.Walls[0] with { WidthMm = 3900, Openings = [new Opening("o", "window", new Rect(1, 2, 3, 4))] }, new Wall { Id = "v", WidthMm = 1000, HeightMm = 1000 }],
        };
        Assert.Equal(
            [
                new("job", "", "title", "a", "b"),
                new("settings", "", "units", "metric", "imperial"),
                new("walls", "w", "width_mm", "4000", "3900"),
                new("walls", "w", "openings.o", "", "o"),
                new("walls", "v", "", "", "v"),
            ],
            JobDifferences.Between(ours, theirs));
    }
}
