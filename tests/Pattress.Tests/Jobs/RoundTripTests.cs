using CsCheck;
using Pattress.Jobs;

namespace Pattress.Tests.Jobs;

public class RoundTripTests
{
    [Fact]
    public void Any_job_that_is_written_reads_back_the_same() => JobGen.Job.Sample(job =>
    {
        string text = JobWriter.Write(job);
        var read = JobReader.Read(text);
        Assert.Equal([], read.Problems);
        Assert.Null(SameJob.Difference(job, read.Value));
    }, iter: 1000);

    [Fact]
    public void What_is_written_fits_the_published_schema() =>
        JobGen.Job.Sample(job => Assert.True(SampleTests.Fits(JobWriter.Write(job))), iter: 100);

    [Fact]
    public void The_comparison_notices_a_change()
    {
        var job = new Job { Walls = [new Wall { Id = "w", WidthMm = 1, HeightMm = 2, Readings = [new Reading { Id = "r", Kind = "tap" }] }] };
        var other = job with { Walls = [job.Walls[0] with { Readings = [job.Walls[0].Readings[0] with { Withdrawn = true }] }] };
        Assert.Equal("job.Walls[0].Readings[0].Withdrawn: False and True", SameJob.Difference(job, other));
    }
}
