from django.db import migrations, models


class Migration(migrations.Migration):
    dependencies = [("people", "0001_people")]

    operations = [
        migrations.CreateModel(
            name="Sending",
            fields=[
                (
                    "id",
                    models.BigAutoField(
                        auto_created=True, primary_key=True, serialize=False, verbose_name="ID"
                    ),
                ),
                ("file", models.CharField(max_length=80)),
                ("key", models.CharField(max_length=400)),
                ("at", models.DateTimeField()),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("file", "key"), name="one_sending")
                ],
            },
        ),
    ]
