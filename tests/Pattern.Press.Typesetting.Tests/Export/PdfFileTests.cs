using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Export.Png;

namespace Pattern.Press.Typesetting.Tests.Export;

public class PdfFileTests
{
    [Fact]
    public void Write_sample()
    {
        using var f = File.Create("/tmp/pdfsample.pdf");
        var d = Sample.Document();
        PdfExporter.Write(d, f);
        for (var i = 0; i < 3; i++)
            File.WriteAllBytes($"/tmp/pdfsample-sk-{i + 1}.png", PngExporter.Render(d.Pages[i], 1000));
    }
}
